### Reading, comparing and sharing a published revision.

## What a signature is put to

statement-revision-factory = I have read this revision. My factory will make the style to it.
statement-revision-brand = This revision is what we ask for. We will judge what arrives by it.
statement-round-factory = I have read the decision on this sample round. My factory will work by it.
statement-round-brand = This is our decision on this sample round.
statement-seal-factory = The pieces named here are sealed. My factory will make the bulk to them and to the revision.
statement-seal-brand = The pieces named here are sealed. We will judge the bulk by them and by the revision.

## A revision

revision-number = Revision { $revision }
revision-reason = Why it was published

## What changed

changes-title = What changed in revision { $revision }
changes-since = Compared with revision { $revision }.
changes-acknowledged = It is the one that your factory acknowledged last.
changes-none = Nothing changed since revision { $revision }.
changes-first = This is the first revision. There is no earlier one to compare it with.
changes-compare = Compare with another revision
changes-with = With revision { $revision }
changes-read = Read revision { $revision }

## The revision page

revision-what-changed = What changed
revision-to-signatures = Signatures
revision-current = Revision { $revision } is current
revision-published = Published { $date } by { $name }
revision-superseded = Superseded
revision-superseded-stop = Do not sew from this.
revision-withdrawn = Withdrawn
revision-withdrawn-why = Stop. Do not sew from this: { $reason }
revision-use = Use revision { $revision }
revision-see-changes = See what changed
revision-none-current = No revision is current. Wait for the brand to publish a new one.
revision-original = Original file
revision-tap = Choose a letter to read about it or to ask. ? is an open question, ! is an open must-fix.
revision-style = Style
revision-revision = Revision
revision-fingerprint = Fingerprint
revision-date = Published
revision-by = Published by
revision-state = State
revision-compare = Compare
revision-measured = { $state } · flat and relaxed · { $edges }. A point can say something else.
revision-contents = On this page
revision-others = Other revisions and downloads
revision-archive = Download the whole revision (ZIP)
revision-archive-what = Its document and the original files that it shows, byte for byte.
revision-document = Download the document of this revision (JSON)
revision-document-what = The exact bytes that the fingerprint is made of.

## Acknowledging

acknowledge-not-yet = Your factory has not acknowledged revision { $revision }.
acknowledge-changed = { $count ->
    [one] 1 change
   *[other] { $count } changes
} since revision { $revision }, which your factory acknowledged last.
acknowledge-what = When you acknowledge it, you say: we have read this revision and work to no other.
acknowledge-button = Acknowledge revision { $revision }
acknowledge-others = Ask your merchandiser to acknowledge it.

## The size chart

chart-title = Size chart
chart-caption = Size chart, { $unit }
chart-units = All values are in { $unit }. The small numbers are { $other }, only for reference.
chart-changed = Underlined values changed since revision { $revision }, which your factory acknowledged last; the old value is struck through.
chart-size = Size
chart-point = Point of measure
chart-base = base
chart-tolerance = Tolerance

## How to measure

how-title = How to measure
how-from = From
how-to = To
how-way = How
how-relaxed = Relaxed
how-stretched = Stretched

## Parts and colourways

parts-approximate = Colours on a screen are approximate. The reference decides.
parts-colourway = Colourway
parts-part = Part

## Words beside a name

about-must-fix = { $count ->
    [one] 1 must-fix
   *[other] { $count } must-fixes
}
about-open = { $count } open
about-new = new
about-changed = changed

## Warnings that were accepted

accepted-title = Warnings that the brand accepted
accepted-reason = Reason:

## Signing

sign-not-shared = This style is not shared with a factory yet.
sign-acknowledged = Acknowledged { $time } UTC
