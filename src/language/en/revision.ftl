### Reading, comparing and sharing a published revision.

## What a signature is put to

statement-revision-factory = I have read this revision. My factory will make the style to it.
statement-revision-brand = This revision is what we ask for. We will judge what arrives by it.
statement-round-factory = I have read the decision on this sample round. My factory will work by it.
statement-round-brand = This is our decision on this sample round.
