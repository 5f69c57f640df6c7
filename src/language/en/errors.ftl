### What went wrong, and the way out.

## A measurement that cannot be read

length-empty = Nothing was entered. Write a measurement, such as 28, 28.5 or 28 1/2.
length-not-a-number = “{ $typed }” is not a measurement. Write it like 28, 28.5 or 28 1/2.
length-unknown-unit = “{ $typed }” has a unit that is not known. Use cm, mm or inch.
length-unit-missing = “{ $typed }” has no unit, and the spec has none yet. Choose the unit in the header, or write it here: 28 cm.
length-may-be-thousands = “{ $typed }” may be read in two ways. Write it without a sign for thousands, or with one more decimal.
length-zero-divisor = “{ $typed }” is a fraction of zero. Write it like 28 1/2.
length-fraction-not-proper = “{ $typed }” has a fraction that is not below one. Write it like 28 1/2.
length-too-fine = “{ $typed }” is finer than can be kept exactly. Write fewer decimals.
length-too-long = “{ $typed }” is longer than a kilometre. Is the unit right?

## A grade rule that cannot be read

grade-unreadable = “{ $piece }” is not a grade rule. Write 2 (every size), XS-L 2, L-2XL 2.5 (by sizes), same, XS=50, S=52 (values), or =C - 1.5 (from point C).
grade-two-readings = “{ $piece }” can be read in two ways. Two sizes or two points have the same code or letter.
grade-unknown-size = “{ $size }” is not one of the sizes.
grade-size-twice = The size “{ $size }” has two values.
grade-unknown-point = “{ $text }” does not begin with the letter of a point. Write =C - 1.5.
grade-too-few-sizes = There are no two sizes yet. Enter the sizes first, or write: same.

## Forms

error-missing = Write something here.
error-text-long = This is too long. Write at most { $most } letters.
error-number-taken = Another style has this number. Choose another one.
error-size-code-signs = A size code cannot have a comma, a semicolon or an equals sign: grade rules need them.
error-screen = “{ $typed }” is not a screen colour. Write it like #1f2a3c.
error-washes = Write how many washes: 1 to 99.
error-name-missing = Write a name.
error-name-long = This name is too long. Write at most 100 letters.
error-login-missing = Write an e-mail address or a name to sign in by.
error-login-taken = Somebody else signs in by this name. Choose another one.
error-password-short = Write at least { $count } characters.
error-password-long = This password is too long. Write at most 1000 characters.
error-password-wrong = This is not your password.
error-place-missing = Choose a role.
error-kind-missing = Choose what it is.
error-factory-missing = Choose a factory.
error-text-missing = Write a message.
error-photos-many = Send at most { $count } photographs at a time.
error-decimal = “{ $typed }” is no number. Write 12.5, for instance.
error-choice-missing = Choose one.
incomparable-illuminants = One was measured under { $standard }, the other under { $sample }: such readings cannot be compared. Measure both under the same light.
incomparable-observers = One was measured for the { $standard }, the other for the { $sample }: such readings cannot be compared. Measure both for the same observer.
incomparable-no-colour = One of the readings is no colour of any surface. Check L*, a* and b*.
incomparable-weight = The weights of the formula are not between 0.1 and 10.
not-on-screen-no-colour = No surface has this colour. L* is from 0 to 150, a* and b* from −200 to 200.

## Pages

problem-heading = This did not work
problem-heading-refused = Not yet
problem-heading-not-found = Not found
problem-home = Back to what needs me
problem-not-found = There is no such page, or it is not shared with you.
problem-sign-in = Sign in first.
problem-not-yours = This is not for the role { $role }. Ask somebody who may.
problem-forged = This form is too old, or it was not sent from this site. Open the page again and send the form once more.
problem-bad-form = What was sent cannot be read. Open the page again and try once more.
problem-too-large = This is too large to send.
problem-too-many-tries = Too many wrong tries. Wait a quarter of an hour.
problem-fault = Something broke on our side. Nothing was lost that was saved before. Tell the person who runs Fellseam this number: { $reference }

way-on-thread = Open thread { $number }
way-on-current = Open revision { $revision }
way-on-publish = Check the draft again
way-on-style = Back to the style

## Files

upload-too-large = The picture is too large. Send one of at most 50 megapixels.
upload-not-a-picture = This file is not a picture. Send a JPEG, PNG, WebP or SVG.
upload-unsupported = { $what } is not a kind of picture that can be shown. Send a JPEG, PNG, WebP or SVG.
upload-heic = This phone saves pictures as HEIC. In the phone's camera settings choose “most compatible” (JPEG), and take the picture again.
upload-too-heavy = This picture takes too long to draw. Save it in a simpler form and send it again.
upload-broken = The picture is damaged. Save it again and send it once more.
upload-failed = The picture could not be prepared. Try again.
