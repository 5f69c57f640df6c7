### Sheets: what is written into them.

sheet-download = Download { $kind }
sheet-draft = Draft
sheet-base = Base size { $size }
sheet-chart = Size chart
sheet-grading = Grading
sheet-in-cm = In cm
sheet-in-inches = In inches
sheet-further = Further values
sheet-materials = Materials
sheet-yes = yes
sheet-offset = Added
sheet-gap = Step { $from } to { $to }
sheet-what = What
sheet-wastage = Wastage, %
sheet-needed = Needed
sheet-kilograms = kg
sheet-pieces = Planned pieces of each size

## What cannot be read

sheet-too-large = The file is too large. Send one of at most 8 MB, with the one sheet that is needed.
sheet-unknown = This is no sheet. Send an XLSX or a CSV file.
sheet-unsupported = { $what } is not read here. Save it as XLSX and send that.
sheet-encoding = The letters of this text cannot be told. Save it as “CSV UTF-8”, or as XLSX.
sheet-too-far = { $cell } lies beyond { $rows } rows and { $columns } columns. Remove what is not needed.
sheet-too-many-cells = More than { $most } cells are filled. Send only the sheet that is needed.
sheet-too-many-sheets = The file has more than { $most } sheets. Send only the one that is needed.
sheet-too-long = { $cell } holds more than { $most } letters.
sheet-nothing = There is nothing in this file.
sheet-too-heavy = This file takes too long to read. Send only the sheet that is needed, saved as a new XLSX file.
sheet-broken = The file is damaged. Save it again and send it once more.
sheet-failed = The file could not be read just now. Try again.
