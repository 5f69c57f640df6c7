### Signing in and out, setting up, invitations.
