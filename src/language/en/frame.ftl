### What stands around every page: title, navigation, footer.

frame-skip = Skip to the page
frame-nav = Main
frame-sign-out = Sign out
frame-foot = Made with Fellseam

nav-needs = What needs me
nav-styles = Styles
nav-people = People
nav-me = My page

language-label = Language
language-unchecked = Written by the program’s makers and not yet checked by a native speaker: { $languages }.
name-erased = (name erased)

## What the form before this page has done

said-saved = Saved.
said-made = Made.
said-restored = The section is as it was then.
said-published = Published.
said-shared = Shared.
said-unshared = No longer shared.
said-withdrawn = Withdrawn.
said-acknowledged = Acknowledged.
said-signed = Signed.
said-sent = Sent.
said-photographed = The photographs are there.
said-translated = The translation stands beside the message.
said-moved = Done.
said-measured = Measurements saved.
said-decided = Decided.
said-sealed = Sealed.
said-begun = Begun.
said-concluded = Concluded.
said-ended = This person can no longer sign in.

## What needs me

needs-none = Nothing waits for you.
needs-since = since { $date }
needs-styles = Your styles
needs-no-styles = No style is shared with you yet. The brand shares a style when it is ready.
needs-newest = Revision { $revision }
need-acknowledge = Read and acknowledge revision { $revision }
need-sign-revision = Sign revision { $revision }
need-sign-revision-blocked = Revision { $revision }: see what is open before you can sign
need-answer = Answer: { $kind }
need-read-answer = Read the answer: { $kind }
need-change = Change it in the next revision: { $kind }
need-round-start = Start sample round { $number }, { $kind }
need-round-measure = Measure and dispatch sample round { $number }, { $kind }
need-round-receive = Confirm that sample round { $number } arrived, { $kind }
need-round-check = Measure sample round { $number }, { $kind }
need-round-decide = Decide sample round { $number }, { $kind }
need-round-sign-blocked = Sample round { $number }, { $kind }: see what is open before you can sign
need-round-sign = Sign the decision on sample round { $number }, { $kind }
need-approvals-decide = Decide on what was submitted to be approved: { $count }
need-approvals-submit = Submit what needs an approval: { $count }
need-sign-seal = Sign the seal of sample round { $number }, { $kind }
need-sign-seal-blocked = Seal of sample round { $number }, { $kind }: see what is open before you can sign
need-inspection = Inspect bulk: inspection { $number }
need-inspection-decide = Decide on the lot of bulk inspection { $number }
need-inspection-again = Mend the lot of bulk inspection { $number } and inspect it again

frame-working = This takes a moment. The page goes on by itself.
frame-sending = Sending files: { $files }, { $size } MB. This page goes on by itself.
