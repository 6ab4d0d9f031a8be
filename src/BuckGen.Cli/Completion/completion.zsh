# Completes buckgen in zsh: every TAB asks the program itself.
_buckgen() {
    local line="${(j: :)words[1,CURRENT-1]} $PREFIX"
    local -a offered=(${(f)"$($words[1] "[suggest:${#line}]" "$line" 2>/dev/null </dev/null)"})
    # Options are offered once a dash is typed; until then a file may be meant.
    [[ $PREFIX == -* ]] || offered=(${offered:#[-/]*})
    compadd -a offered || _files
}
compdef _buckgen buckgen
