### What went wrong, and the way out.

## A measurement that cannot be read

length-empty = Nothing was entered. Write a measurement, such as 28, 28.5 or 28 1/2.
length-not-a-number = “{ $typed }” is not a measurement. Write it like 28, 28.5 or 28 1/2.
length-unknown-unit = “{ $typed }” has a unit that is not known. Use cm, mm or inch.
length-may-be-thousands = “{ $typed }” may be read in two ways. Write it without a sign for thousands, or with one more decimal.
length-zero-divisor = “{ $typed }” is a fraction of zero. Write it like 28 1/2.
length-fraction-not-proper = “{ $typed }” has a fraction that is not below one. Write it like 28 1/2.
length-too-fine = “{ $typed }” is finer than can be kept exactly. Write fewer decimals.
length-too-long = “{ $typed }” is longer than a kilometre. Is the unit right?
