### Writing a spec.

draft-sections = Sections of the draft
draft-publish = Check and publish
draft-not-begun = not begun
draft-to-mend = { $count } to mend
draft-warned = { $count ->
    [one] 1 warning
   *[other] { $count } warnings
}
draft-done = done
draft-save = Save
draft-findings = To mend in this section
draft-findings-none = Nothing is missing here.
draft-finding-open = Go there
draft-lost = A save of yours is not in the draft yet: somebody else saved first.
draft-lost-open = { $section }, your save of { $at } UTC: see both versions

## Header

header-number = Style number
header-name = Name
header-garment = What it is
header-wearer = Made for
header-season = Season and year
header-origin = Country of origin
header-markets = Where it will be sold
header-unit = Unit
header-unit-help = All measurements are written in it. The other one is shown beside them.
header-base-size = Base size
header-base-size-help = The size that the first sample is made in.
header-base-size-none = There are no sizes yet. Enter them first:
header-measured = Measured
header-measured-help = Flat and relaxed, seam to seam.
header-after-washes = After washes
header-washes = Number of washes
header-main-fabric = Main fabric, in one line
header-contrast-fabric = Contrast fabric, in one line
