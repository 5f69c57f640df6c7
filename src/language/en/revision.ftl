### Reading, comparing and sharing a published revision.
