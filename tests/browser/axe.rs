//! That axe-core has nothing to say of any page, with everything unfolded, every panel open and
//! every form refused, on a large screen and on a phone.
//!
//! axe-core is no part of the program: `tests/run.sh --axe` fetches it, in the version that
//! `tests/package.json` names, into the folder that cargo builds in.

mod everything;
mod look;
