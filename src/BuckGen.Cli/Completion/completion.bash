# Completes buckgen in bash: every TAB asks the program itself.
_buckgen() {
    local offered word=${COMP_WORDS[COMP_CWORD]}
    offered=$("$1" "[suggest:$COMP_POINT]" "$COMP_LINE" 2>/dev/null </dev/null)
    # Options are offered once a dash is typed; until then a file may be meant.
    [[ $word == -* ]] || offered=$(grep -v '^[-/]' <<<"$offered")
    COMPREPLY=($(compgen -W "$offered" -- "$word"))
}
complete -o default -F _buckgen buckgen
