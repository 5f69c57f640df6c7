### People, factories and invitations.
