### Signing in and out, setting up, invitations.

sign-in-title = Sign in
sign-in-login = E-mail or sign-in name
sign-in-password = Password
sign-in-wrong = The name or the password is not right. Try again.
sign-in-code = I have a code from my other device
sign-in-lost = No password? Ask the person who invited you for a new link.

set-up-title = Set up Fellseam
set-up-what = You are the first here. Name your brand and yourself: you become its owner.
set-up-brand = Name of the brand
set-up-name = Your name
set-up-button = Set up

join-title = Come in
join-for = This link is for { $name }
join-as = You come in as { $role }, { $org }.
join-name = Your name
join-button = Come in
join-once = The link works once. Nothing is used up until you press the button.

spent-title = This link does not work
spent-why = It was used before, or its time is over.

code-title = Code from your other device
code-label = Code
code-where = On the other device, open My page and choose Show a code.
code-wrong = This code is not right, or its time is over. Make a new one.
code-button = Come in

me-title = My page
me-about = About me
me-save = Save
me-second = Second device
me-second-what = Open Fellseam on your phone or computer without a new link.
me-second-button = Show a code
me-code-title = Code for your second device
me-code-how = Open { $address } on the other device and type this code. It works once, for ten minutes.
me-code-qr = Opens the page where the code is typed
me-password = Password
me-password-what = With a password you can sign in without a link. Setting one signs out all other devices.
me-password-old = Password now
me-password-new = New password
me-password-button = Set password
me-out = Sign out everywhere
me-out-what = Ends every session of yours, on all devices.
me-out-sure = This device is signed out, too. You need your password or a new link to come in again.
me-out-button = Sign out everywhere
