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
