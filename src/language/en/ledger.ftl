### Who did what when.
ledger-title = Ledger
