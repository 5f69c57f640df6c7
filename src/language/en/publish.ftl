### Checking and publishing a draft.

publish-title = Check and publish
publish-heading = Publish revision { $revision }
publish-not-yet = It was not published
publish-reasons-missing = { $count ->
    [one] A reason is missing. Go there.
   *[other] { $count } reasons are missing. Go to the first one.
}
publish-moved = Saved since you opened the page:
publish-mend = To mend first
publish-mend-what = { $count ->
    [one] 1 error keeps the draft from being published.
   *[other] { $count } errors keep the draft from being published.
}
publish-mend-open = Open it
publish-no-errors = Nothing has to be mended.
publish-warnings = Is this meant?
publish-warnings-what = A warning does not stop you. Say why it is right: your reason is printed in the revision.
publish-warning-reason = Why is it right?
publish-warning-open = Look at it
publish-must-fixes = Agreed must-fixes
publish-must-fixes-what = Each of them must be changed in this revision.
publish-must-fix-gone = The item is not in the draft any more
publish-carried = changed
publish-not-carried = not changed yet
publish-changes = Changes since revision { $revision }
publish-no-changes = The draft says the same as revision { $revision }.
publish-last = Ready to publish
publish-reason = Why do you publish it?
publish-reason-help = One or two sentences. Everybody who reads the revision sees them.
publish-decimal = How numbers are written
publish-decimal-what = The same on every page and print of this revision, in every language.
publish-decimal-point = 28.5 (point)
publish-decimal-comma = 28,5 (comma)
publish-seen-by = It is seen at once by { $factories }.
publish-seen-by-none = No factory sees it yet: share the style after publishing.
publish-forever = A published revision never changes. A correction is a new revision.
publish-button = Publish revision { $revision }
