### How the brand numbers its styles.

nav-numbers = Style numbers
numbers-title = Style numbers
numbers-how = Write how a style number looks: fixed text, and in braces what changes. Leave it empty to type every number by hand.
numbers-how-seq = a counter with three digits; it runs for itself in every season, kind ...
numbers-how-list = one of the codes of the list season, which you write below
numbers-how-colourway = a counter for the colourways of a style
numbers-how-check = a check character: a number that was copied wrong is noticed
numbers-mask = Mask
numbers-example = The first number:
numbers-check = Check character (ISO 7064)
numbers-list = A list
numbers-list-name = Name in the mask
numbers-list-entries = One a line: the code, an equals sign, what it means
numbers-next = Leave the number empty to take the next free one.
numbers-next-free = The next free one is { $number }.

not-a-mask-too-long = The mask is too long.
not-a-mask-brace-open = The brace at character { $at } is never closed.
not-a-mask-brace-closed = The brace at character { $at } closes nothing.
not-a-mask-unknown = “{ $name }” at character { $at } is no counter and no list. Write a list of that name below, or use seq, colourway or check.
not-a-mask-digits = The counter “{ $name }” at character { $at } needs its number of digits: “{ $name }:3”.
not-a-mask-not-counted = “{ $name }” at character { $at } has no number of digits. Take the colon away.
not-a-mask-twice = “{ $name }” at character { $at } is there twice. Once is enough.
not-a-mask-no-counter = The mask needs a counter, so that no two styles get one number: write “seq:3” in braces.
not-a-mask-before-counter = “{ $name }” at character { $at } comes too early: put it after seq.
not-a-mask-no-system = Choose how the check character is worked out.
not-a-mask-no-place = Write “check” in braces where the check character goes, or choose no system.
not-a-mask-too-many-lists = These are too many lists.
not-a-mask-list-name = “{ $name }” cannot be the name of a list, or there are two of it.
not-a-mask-list-empty = The list “{ $list }” has no codes.
not-a-mask-code-empty = A line of the list “{ $list }” has no code.
not-a-mask-code-twice = The code “{ $code }” is twice in the list “{ $list }”.
not-a-mask-unprotected-text = “{ $character }” at character { $at } cannot be protected by this check character. Choose another system.
not-a-mask-unprotected-code = “{ $character }” in the code “{ $code }” of the list “{ $list }” cannot be protected by this check character. Choose another system.

no-number-choice = Choose from the list “{ $list }”.
no-number-code = The list “{ $list }” has no such code.
no-number-full = The counter is full. Change the mask under “Style numbers”, or choose another code.
no-number-other = This number cannot be made. Type one.
not-a-number-mask = This number does not look like your style numbers. Leave it empty to take the next free one.
not-a-number-check = The check character does not fit: something in the number was copied wrong.
not-a-number-two = This number can be read in two ways. Choose another.
error-number-like = “{ $other }” is there already, and differs only in capitals or spaces.
