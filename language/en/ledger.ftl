### Who did what when.
