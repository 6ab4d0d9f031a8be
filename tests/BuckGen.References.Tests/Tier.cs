// All of them start other programs.
[assembly: Trait("Tier", "slow")]
