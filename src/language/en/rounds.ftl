### Sample rounds and measuring.
