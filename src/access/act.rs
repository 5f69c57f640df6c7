//! The table of roles and acts.

use super::Role;
use super::Role::*;

/// Something a person may want to do. The implementors are the rows of the table below.
pub trait Act: Send + Sync + 'static {
    /// For refusals and logs.
    const NAME: &'static str;
    /// The roles that may.
    const ROLES: &'static [Role];
}

macro_rules! acts {
    ($($(#[$doc:meta])* $name:ident: $roles:expr;)*) => {
        $(
            $(#[$doc])*
            #[derive(Debug, Clone, Copy)]
            pub enum $name {}

            impl Act for $name {
                const NAME: &'static str = stringify!($name);
                const ROLES: &'static [Role] = &$roles;
            }
        )*

        /// Every act with the roles that may, for the tests that walk the whole table.
        pub const TABLE: &[(&str, &[Role])] = &[$((stringify!($name), &$roles)),*];
    };
}

acts! {
    /// Come in, see what needs one, keep one's own name, language, password and devices.
    Enter: [Owner, Designer, Viewer, Merchandiser, SampleRoom, Inspector];
    /// Read the brand's list of styles.
    Browse: [Owner, Designer, Viewer];
    /// Start a style.
    Create: [Owner, Designer];
    /// Name people and factories, end somebody's access, set up the installation.
    Govern: [Owner];
    /// Send a new link to somebody: an owner to anybody, a merchandiser to their own people.
    Invite: [Owner, Merchandiser];

    /// Read a style: the brand all of it, a factory what is published and shared with it.
    Read: [Owner, Designer, Viewer, Merchandiser, SampleRoom, Inspector];
    /// Read drafts, internal notes and everybody's threads.
    Review: [Owner, Designer, Viewer];
    /// Write the draft.
    Write: [Owner, Designer];
    Publish: [Owner, Designer];
    Withdraw: [Owner];
    /// Share a style with a factory, or end that.
    ShareWith: [Owner, Designer];
    Acknowledge: [Merchandiser];
    /// Raise a thread.
    Ask: [Owner, Designer, Merchandiser, SampleRoom];
    /// Write into a thread and move it on. Who may make which move is the thread's own rule.
    Answer: [Owner, Designer, Merchandiser, SampleRoom];
    /// Ask for a sample round, receive and decide it; decide what was submitted, and on a lot that
    /// was inspected.
    Decide: [Owner, Designer];
    /// Start a round's work and dispatch it.
    Dispatch: [Merchandiser];
    Measure: [Owner, Designer, Merchandiser, SampleRoom];
    /// Submit lab dips, strike-offs and trims.
    Submit: [Merchandiser];
    /// Seal pieces of an approved round.
    Seal: [Owner];
    /// Inspect a finished lot against a sealed sample, and conclude that.
    Inspect: [Owner, Designer, Merchandiser, Inspector];
    Sign: [Owner, Designer, Merchandiser];
}

/// Acts in which somebody may bring photographs along.
pub trait BringsPhotos: Act {}

impl BringsPhotos for Ask {}
impl BringsPhotos for Answer {}
impl BringsPhotos for Measure {}
impl BringsPhotos for Submit {}
