### The list of styles and one style.

styles-title = Styles
styles-none = There are no styles yet.
styles-style = Style
styles-newest = Newest revision
styles-revision = Revision { $revision }
styles-draft-only = draft only
styles-threads = Open threads
styles-rounds = Open sample rounds
styles-create = Start a style
styles-create-button = Start the style

## One style

style-draft = Draft
style-draft-first = Nothing is published yet. No factory sees the draft.
style-draft-differs = The draft is not the same as the newest revision. No factory sees it until you publish.
style-draft-same = The draft says the same as the newest revision.
style-publish = Check and publish
style-revisions = Revisions
style-no-revisions = No revision is published yet.
style-revision = Revision { $number }
style-open-revision = Open revision { $number }
style-older = Older revisions
style-published = Published
style-published-by = Published by
style-fingerprint = Fingerprint
style-withdrawn-because = Stop. Do not work from it: { $reason }
style-acknowledged-by = Acknowledged by { $name }, { $date }
style-signed-factory = Signed for the factory by { $name }, { $date }
style-signed-brand = Signed for the brand by { $name }, { $date }
style-revision-head = Revision
style-state = State
style-reason = Reason
style-agreed = Agreed with
style-next = Next
style-next-you = you
style-next-brand = the brand
style-factory = Factory
style-threads = Open threads
style-no-threads = Nothing is open.
style-thread-item = About
style-thread-words = What was written
style-thread-open = Open it
style-rounds = Sample rounds
style-no-rounds = No samples were asked for yet.
style-round-head = Round
style-round = { $kind }, round { $number }
style-ask-round = Ask for a sample round
style-shares = Shared with
style-no-shares = It is not shared with a factory yet.
style-shared-since = Since
style-share = Share with this factory
style-share-ended = ended { $date }
style-unshare = End the share
style-unshare-what = { $factory } will see nothing of this style any more: no revision, no thread and no round.
style-acts = What you can do
style-withdraw = Withdraw revision { $number }
style-withdraw-what = Every page and every print of it will say stop. This cannot be taken back. No older revision takes its place: publish a new one.
style-withdraw-reason = Why? Everybody who reads it sees your reason.

copy-title = Copy this style
copy-what = The copy begins with everything that the draft says. Approvals, exemptions, pieces and numbers of colourways are not copied; nor are revisions, threads and rounds.
copy-button = Begin the copy
style-copy = Copy to a new style
style-copied-from = Copied from
