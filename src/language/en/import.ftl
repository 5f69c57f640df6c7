### Bringing a sheet into a draft.

import-link = Import from a sheet
import-title = Import { $section } from a sheet
import-how-it-works = Choose a file. You then say what its columns hold, see what would change, and decide. Nothing is changed before that.
import-file = XLSX or CSV file
import-file-help = At most 8 MB. Save other kinds as XLSX first.
import-file-missing = Choose a file first.
import-read-file = Read the file
import-no-sizes = The spec has no sizes yet: no column can be a size. Enter them first.

## What the columns hold

import-columns-heading = What the columns hold
import-sheet = Sheet
import-head = Row of the heads
import-head-help = The row with the names of the columns. The rows below it are read. 0: there are no heads.
import-head-wrong = Write the number of a row of the sheet, or 0.
import-look = Look again
import-unit = Numbers without a unit are in
import-unit-help = Where the head of a column names a unit, that one counts.
import-column = Column { $column }
import-column-head = Column { $column }: { $head }
import-leave-out = leave out
import-preview = See what would change
import-field-twice = Two columns hold “{ $field }”. Choose one of them.
import-no-column = No column holds the values of { $sizes }. Choose one for each size, or leave all sizes out.
import-no-names = Say which column holds the letters or the names: rows are told by them.
import-how = How to measure
import-tolerance = Tolerance, minus and plus
import-size = Size { $size }

## What would change

import-preview-heading = What would change
import-rows-read = { $count ->
    [0] No row can be read.
    [one] 1 row can be read.
   *[other] { $count } rows can be read.
}
import-no-change = The draft has all of this already.
import-empty-cells = An empty cell leaves what is there. What the sheet does not name stays as it is.
import-left-heading = What cannot be read
import-left = { $count ->
    [one] 1 cell cannot be read. Its row is left out, whole.
   *[other] { $count } cells cannot be read. Their rows are left out, whole.
}
import-added-heading = What is added, in full
import-told-heading = What to look at
import-formulas = { $count ->
    [one] 1 cell is a formula. Its last value was taken: { $cells }
   *[other] { $count } cells are formulas. Their last values were taken: { $cells }
}
import-and-more = { $cells } and { $count } more
import-save = { $left ->
    [0] Save this
   *[other] Save this, without the rows that are left out
}
import-back = Back to the columns
import-moved = Sizes or header were changed while you were looking. Look once more at what would change.

## Cells that cannot be read

import-not-a-number = “{ $typed }” is no number.
import-unknown-word = “{ $typed }” is nothing that “{ $field }” can be.
import-composition = “{ $typed }” cannot be read. Write it like 80% cotton 20% polyester.
import-fibre = “{ $name }” is no fibre name that is known here. Write the generic name, such as polyamide.
import-date = The spreadsheet has made a date of this. Make the cell a text and type the value again.
import-fault = The formula has no value: { $typed }
import-uncomputed = The formula was never worked out. Open the file in a spreadsheet, save it and send it again.
import-merged = This cell is merged with { $cell }. Divide the merged cell and write the value in each.
import-negative = “{ $typed }” must be above zero here.
import-long-text = This text is too long. At most 500 letters are taken.
import-twice = The row of { $cell } is about the same. Keep one of the two.
import-nameless = The row has neither letter nor name.
import-only-a-name = “{ $typed }” stands alone in its row: taken for a heading.
import-sizes-missing = No value for { $sizes }. Fill all sizes, or none.
import-not-a-multiple = { $typed } would be rounded: the point is rounded to { $step }. Write a multiple of it, or another rounding step.
import-base-differs = The base value is not the value of the base size.
import-formula = A formula. Its last value was taken.
import-rule-differs = “{ $typed }” does not give the values beside it. The values were taken.
