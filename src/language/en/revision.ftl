### Reading, comparing and sharing a published revision.

## What a signature is put to

statement-revision-factory = I have read this revision. My factory will make the style to it.
statement-revision-brand = This revision is what we ask for. We will judge what arrives by it.
statement-round-factory = I have read the decision on this sample round. My factory will work by it.
statement-round-brand = This is our decision on this sample round.

## A revision

revision-number = Revision { $revision }
revision-reason = Why it was published:

## What changed

changes-title = What changed in revision { $revision }
changes-since = Compared with revision { $revision }.
changes-acknowledged = It is the one that your factory acknowledged last.
changes-none = Nothing changed since revision { $revision }.
changes-first = This is the first revision. There is no earlier one to compare it with.
changes-compare = Compare with another revision
changes-with = With revision { $revision }
changes-read = Read revision { $revision }
