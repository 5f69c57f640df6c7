### People, factories and invitations.

people-title = People
people-name = Name
people-role = Role
people-org = Organisation
people-acts = What you can do
people-left = no access
people-new-link = New link
people-end = End access
people-end-what = { $name } is signed out everywhere at once and cannot come in again. What they wrote and signed stays. This is not taken back: to have them again, invite them anew.
people-add = Invite somebody
people-add-button = Make a link
people-inspector = An inspector of a third party is added to the factory whose lots they inspect. They read what that factory reads: its revisions, threads and rounds, no prices, no other factory.
people-factory = Add a factory
people-factory-name = Name of the factory
people-factory-button = Add factory
people-link-for = A link for { $name }
people-link-how = Send this link to them, and to nobody else. It works once, within seven days. You see it only now.
people-link-label = Link
people-link-qr = Or scan it with their phone
people-link-unreachable = This address opens on this machine only. Start the program with --public-url to make links for others.
