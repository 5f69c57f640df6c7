//! Permits: the proof, made here and nowhere else, that somebody may do something.

use std::marker::PhantomData;

use super::{Act, Actor, Role, Side};
use crate::spec::{OrgId, PersonId, StyleId};

/// What the store has read about a style and the organisation of the one who asks.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct StyleFacts {
    pub style: StyleId,
    /// The share with the actor's factory while it lasts; never set for the brand.
    pub share: Option<Share>,
    /// Another word whenever something that the style's pages show has changed, drafts left out.
    pub edition: String,
}

/// A style is shared with this factory now.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Share {
    pub org: OrgId,
}

/// Why not.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum Denied {
    /// The actor must not learn that it exists: answered like a thing that does not.
    #[error("there is no such thing for this person")]
    Hidden,
    /// The actor may see it, but this act is not theirs.
    #[error("{role} may not {act}", role = .role.name())]
    NotYours { act: &'static str, role: Role },
}

/// Leave to do `A` in the actor's own organisation.
#[derive(Debug, Clone)]
pub struct Permit<A> {
    actor: Actor,
    act: PhantomData<fn() -> A>,
}

impl<A: Act> Permit<A> {
    pub fn person(&self) -> &PersonId {
        &self.actor.person
    }

    pub fn org(&self) -> &OrgId {
        &self.actor.org
    }

    pub fn role(&self) -> Role {
        self.actor.role
    }

    pub fn side(&self) -> Side {
        self.actor.side()
    }

    /// The factory that every row read must belong to; `None` for the brand, who reads all.
    pub fn tenant(&self) -> Option<&OrgId> {
        (self.side() == Side::Factory).then_some(&self.actor.org)
    }
}

/// Leave to do `A` on one style.
#[derive(Debug, Clone)]
pub struct StylePermit<A> {
    actor: Actor,
    style: StyleId,
    act: PhantomData<fn() -> A>,
}

impl<A: Act> StylePermit<A> {
    /// Whom the moves of the exchange are made by.
    pub fn actor(&self) -> &Actor {
        &self.actor
    }

    pub fn person(&self) -> &PersonId {
        &self.actor.person
    }

    pub fn org(&self) -> &OrgId {
        &self.actor.org
    }

    pub fn role(&self) -> Role {
        self.actor.role
    }

    pub fn side(&self) -> Side {
        self.actor.side()
    }

    pub fn style(&self) -> &StyleId {
        &self.style
    }

    /// The factory that every row read or written must belong to; `None` for the brand.
    pub fn tenant(&self) -> Option<&OrgId> {
        (self.side() == Side::Factory).then_some(&self.actor.org)
    }

    /// May the holder do `B` on this style, too? A page shows only the acts that are its reader's.
    pub fn also<B: Act>(&self) -> Result<StylePermit<B>, Denied> {
        role_may::<B>(&self.actor)?;
        Ok(StylePermit {
            actor: self.actor.clone(),
            style: self.style.clone(),
            act: PhantomData,
        })
    }
}

fn role_may<A: Act>(actor: &Actor) -> Result<(), Denied> {
    if A::ROLES.contains(&actor.role) {
        Ok(())
    } else {
        Err(Denied::NotYours {
            act: A::NAME,
            role: actor.role,
        })
    }
}

/// May this person do `A` at all?
pub fn grant<A: Act>(actor: &Actor) -> Result<Permit<A>, Denied> {
    role_may::<A>(actor)?;
    Ok(Permit {
        actor: actor.clone(),
        act: PhantomData,
    })
}

/// May this person do `A` on this style? A factory that it is not shared with does not even learn
/// that the style exists, whatever the act; no factory learns what there is for the brand alone.
pub fn grant_on<A: Act>(actor: &Actor, facts: &StyleFacts) -> Result<StylePermit<A>, Denied> {
    if actor.side() == Side::Factory {
        let shared = facts
            .share
            .as_ref()
            .is_some_and(|share| share.org == actor.org);
        let brand_alone = A::ROLES.iter().all(|role| role.side() == Side::Brand);
        if !shared || brand_alone {
            return Err(Denied::Hidden);
        }
    }
    role_may::<A>(actor)?;
    Ok(StylePermit {
        actor: actor.clone(),
        style: facts.style.clone(),
        act: PhantomData,
    })
}

#[cfg(test)]
mod tests {
    use super::super::act;
    use super::*;

    fn actor(org: &str, role: Role) -> Actor {
        Actor {
            person: PersonId::new("somebody"),
            org: OrgId::new(org),
            role,
        }
    }

    fn style(shared_with: Option<&str>) -> StyleFacts {
        StyleFacts {
            style: StyleId::new("style"),
            share: shared_with.map(|org| Share {
                org: OrgId::new(org),
            }),
            edition: String::new(),
        }
    }

    #[test]
    fn a_factory_without_a_share_learns_nothing() {
        for role in [Role::Merchandiser, Role::SampleRoom, Role::Inspector] {
            let stranger = actor("mill", role);
            assert_eq!(
                grant_on::<act::Read>(&stranger, &style(None)).err(),
                Some(Denied::Hidden)
            );
            // Not even by an act that its role may not do anyway.
            assert_eq!(
                grant_on::<act::Publish>(&stranger, &style(None)).err(),
                Some(Denied::Hidden)
            );
            assert_eq!(
                grant_on::<act::Read>(&stranger, &style(Some("another"))).err(),
                Some(Denied::Hidden)
            );
        }
    }

    #[test]
    fn a_shared_factory_reads_but_does_not_write() {
        let merchandiser = actor("mill", Role::Merchandiser);
        let shared = style(Some("mill"));
        let permit = grant_on::<act::Read>(&merchandiser, &shared).expect("it is shared");
        assert_eq!(permit.tenant(), Some(&OrgId::new("mill")));
        assert!(permit.also::<act::Sign>().is_ok());
        assert!(permit.also::<act::Write>().is_err());
        assert_eq!(
            grant_on::<act::Write>(&merchandiser, &shared).err(),
            Some(Denied::Hidden),
            "drafts are for the brand alone"
        );
        assert!(matches!(
            grant_on::<act::Sign>(&actor("mill", Role::SampleRoom), &shared),
            Err(Denied::NotYours { .. })
        ));
    }

    #[test]
    fn an_inspector_reads_and_inspects_and_nothing_else() {
        let own = [act::Enter::NAME, act::Read::NAME, act::Inspect::NAME];
        for (name, roles) in act::TABLE {
            let may = roles.contains(&Role::Inspector);
            assert_eq!(may, own.contains(name), "{name}");
        }
        assert!(!Role::Inspector.signs() && !Role::Inspector.leads());
        let elsewhere = grant_on::<act::Inspect>(&actor("mill", Role::Inspector), &style(None));
        assert_eq!(elsewhere.err(), Some(Denied::Hidden));
    }

    #[test]
    fn the_brand_reads_without_a_share_and_has_no_tenant() {
        let viewer = actor("brand", Role::Viewer);
        let permit = grant_on::<act::Read>(&viewer, &style(None)).expect("the brand reads all");
        assert_eq!(permit.tenant(), None);
        assert!(grant_on::<act::Write>(&viewer, &style(None)).is_err());
        assert!(grant::<act::Create>(&viewer).is_err());
        assert!(grant::<act::Govern>(&actor("brand", Role::Owner)).is_ok());
    }

    #[test]
    fn no_act_is_for_nobody_and_signing_never_for_a_viewer() {
        for (name, roles) in act::TABLE {
            assert!(!roles.is_empty(), "{name}");
        }
        assert!(!act::Sign::ROLES.contains(&Role::Viewer));
    }
}
