//! The people that the tests tell of, as typed clients: the brand Harrow & Tide, and the factories
//! Sao Mai Garment and Meghna Knit Works.
//!
//! ```ignore
//! let cast = Cast::with_revision(db).await;
//! let thread = cast.sao_mai.asks("point-c", "Is this with the rib?").await.unwrap();
//! cast.brand.says(&thread, "Without it.").await.unwrap();
//! cast.brand.edits(|spec| set_base(spec, "point-c", "28 3/4")).await;
//! assert_eq!(cast.brand.publishes("Longer").await.unwrap(), 2);
//! ```
//!
//! Everybody works on one style, the half-zip of the example; `brand.on(&style)` works on another.
//! What may be refused returns the store's `Result`; permits are asked for anew at every step, and a
//! person without one panics, so `may` is the way to ask whether somebody has one.

mod brand;
mod bulk;
mod factory;
mod party;

use std::ops::Deref;

use fellseam::access::{Act, Actor, Denied, Permit, Role, StylePermit, grant, grant_on};
use fellseam::exchange::approval::Verdict;
use fellseam::exchange::round::{Kind, Materials, Outcome};
use fellseam::exchange::seal::Keep;
use fellseam::exchange::{Refused, Side};
use fellseam::spec::document::{Illuminant, Lab, Observer};
use fellseam::spec::example::half_zip;
use fellseam::spec::{
    Decimal, Digest, Entered, ItemId, OrgId, RoundId, SealId, Spec, StyleId, Unit,
};
use fellseam::store::{Db, FileKind, Need, NewFile, NewPerson, NewPicture, Store, StoreError};

use super::world::{Clock, world};

pub use bulk::{lot, small_lot, sort};

/// Everybody, and what they work with.
pub struct Cast {
    pub store: Store,
    pub clock: Clock,
    pub brand: Brand,
    pub sao_mai: Factory,
    pub meghna: Factory,
}

/// One person.
#[derive(Clone)]
pub struct Person {
    store: Store,
    pub actor: Actor,
    pub name: &'static str,
}

/// What the people of either side do.
#[derive(Clone)]
pub struct Party {
    pub store: Store,
    pub org: OrgId,
    pub style: StyleId,
    /// Who speaks and signs for it: the designer, the merchandiser.
    pub lead: Person,
    /// Who measures: the designer, the sample room.
    pub hands: Person,
}

/// Harrow & Tide. Does what it does by its designer, unless it takes the owner.
#[derive(Clone)]
pub struct Brand {
    party: Party,
    pub owner: Person,
    pub viewer: Person,
}

/// A factory. Does what it does by its merchandiser, and measures by its sample room.
#[derive(Clone)]
pub struct Factory {
    party: Party,
}

impl Deref for Brand {
    type Target = Party;
    fn deref(&self) -> &Party {
        &self.party
    }
}

impl Deref for Factory {
    type Target = Party;
    fn deref(&self) -> &Party {
        &self.party
    }
}

/// The drawing of the example, as its original.
pub fn drawing() -> Digest {
    Digest::of(b"the front of the half-zip")
}

/// A second style, HT-205: the same half-zip under another number.
pub fn another_style() -> Spec {
    let mut spec = half_zip(drawing());
    spec.header.number = "HT-205".to_owned();
    spec
}

pub fn item(id: &str) -> ItemId {
    ItemId::new(id)
}

/// What a person typed into a field for inches.
pub fn inches(typed: &str) -> Entered {
    Entered::read(typed, Unit::Inch).expect("a length")
}

/// Gives a point another value at the base size.
pub fn set_base(spec: &mut Spec, point: &str, typed: &str) {
    let points = &mut spec.points.points;
    let point = points.iter_mut().find(|it| it.id == item(point));
    point.expect("the point").base = Some(inches(typed));
}

/// A reading of a dark blue for the 10° observer.
pub fn lab(l: &str, illuminant: Illuminant) -> Lab {
    let number = |typed: &str| Decimal::read(typed).expect("a number");
    Lab {
        l: number(l),
        a: number("1"),
        b: number("-12"),
        illuminant,
        observer: Observer::Ten,
    }
}

/// What the rules refused.
pub fn refusal<T: std::fmt::Debug>(outcome: Result<T, StoreError>) -> Refused {
    match outcome {
        Err(StoreError::Refused(why, _)) => *why,
        other => panic!("the rules refused nothing: {other:?}"),
    }
}

/// Whether it was answered like something that is not there.
pub fn is_missing<T: std::fmt::Debug>(outcome: &Result<T, StoreError>) -> bool {
    matches!(outcome, Err(StoreError::Missing))
}

impl Cast {
    /// Everybody is there, and the half-zip HT-204 is a draft, shared with nobody.
    pub async fn new(db: Db) -> Cast {
        let (world, clock) = world();
        let store = Store::new(db, world);
        let owner = store.found("Harrow & Tide", "Nell", "en").await.unwrap();
        let brand = OrgId::new("brand");
        let owner = Person {
            store: store.clone(),
            actor: Actor {
                person: owner,
                org: brand.clone(),
                role: Role::Owner,
            },
            name: "Nell",
        };
        let designer = owner.names("Iris", &brand, Role::Designer, "en").await;
        let viewer = owner.names("Oscar", &brand, Role::Viewer, "en").await;
        let style = designer.starts(&half_zip(drawing())).await;
        let sao_mai = factory(&owner, &style, "Sao Mai Garment", ["Linh", "Hoa"]).await;
        let meghna = factory(&owner, &style, "Meghna Knit Works", ["Rafiq", "Shirin"]).await;
        let party = Party {
            store: store.clone(),
            org: brand,
            style,
            lead: designer.clone(),
            hands: designer,
        };
        Cast {
            store,
            clock,
            brand: Brand {
                party,
                owner,
                viewer,
            },
            sao_mai,
            meghna,
        }
    }

    /// Revision 1 is published and shared with Sao Mai Garment.
    pub async fn with_revision(db: Db) -> Cast {
        let cast = Cast::new(db).await;
        cast.brand.publishes("First issue").await.unwrap();
        cast.brand.shares_with(&cast.sao_mai).await.unwrap();
        cast
    }
}

/// Its people read English, so that a test can say what they see.
async fn factory(
    owner: &Person,
    style: &StyleId,
    name: &str,
    people: [&'static str; 2],
) -> Factory {
    let store = &owner.store;
    let org = store.add_factory(&owner.may(), name).await.unwrap();
    let [merchandiser, sample_room] = people;
    let merchandiser = owner.names(merchandiser, &org, Role::Merchandiser, "en");
    let sample_room = owner.names(sample_room, &org, Role::SampleRoom, "en");
    Factory {
        party: Party {
            store: store.clone(),
            style: style.clone(),
            lead: merchandiser.await,
            hands: sample_room.await,
            org,
        },
    }
}

impl Person {
    pub fn store(&self) -> &Store {
        &self.store
    }

    /// Leave to do `A`, which the person's role has.
    pub fn may<A: Act>(&self) -> Permit<A> {
        grant(&self.actor).unwrap_or_else(|why| panic!("{}: {why}", self.name))
    }

    /// Leave to do `A` on a style, or why not, as a page would be told.
    pub async fn may_on<A: Act>(&self, style: &StyleId) -> Result<StylePermit<A>, Denied> {
        let facts = self.store.style_facts(&self.actor, style).await.unwrap();
        grant_on(&self.actor, &facts.ok_or(Denied::Hidden)?)
    }

    /// Leave to do `A` on a style, which the person has.
    pub async fn on<A: Act>(&self, style: &StyleId) -> StylePermit<A> {
        let permit = self.may_on(style).await;
        permit.unwrap_or_else(|why| panic!("{}: {why}", self.name))
    }

    /// Names a new person.
    pub async fn names(
        &self,
        name: &'static str,
        org: &OrgId,
        role: Role,
        language: &str,
    ) -> Person {
        let new = NewPerson {
            org,
            role,
            name,
            language,
        };
        let person = self.store.add_person(&self.may(), new).await.unwrap();
        Person {
            store: self.store.clone(),
            actor: Actor {
                person,
                org: org.clone(),
                role,
            },
            name,
        }
    }

    /// Starts a style, with the originals of its drawings.
    pub async fn starts(&self, spec: &Spec) -> StyleId {
        let style = self.store.create_style(&self.may(), spec).await.unwrap();
        for drawing in &spec.drawings.drawings {
            let file = NewFile {
                digest: &drawing.file,
                kind: FileKind::Drawing,
                media_type: "image/svg+xml",
                name: "half-zip-front.svg",
                size: 4096,
                width: drawing.width,
                height: drawing.height,
                taken: None,
                pictures: &pictures(&drawing.file),
            };
            let permit = self.on(&style).await;
            self.store.add_drawing(&permit, file).await.unwrap();
        }
        style
    }

    /// Opens a session. Returns its token.
    pub async fn signs_in(&self) -> String {
        self.store.open_session(&self.actor.person).await.unwrap()
    }

    pub async fn needs(&self) -> Vec<Need> {
        self.store.needs(&self.may()).await.unwrap()
    }
}

/// What is made of a file: a narrow and a wide picture.
pub fn pictures(of: &Digest) -> Vec<NewPicture> {
    [320, 1280]
        .map(|width| NewPicture {
            width,
            height: width,
            media_type: "image/webp".to_owned(),
            digest: Digest::of(format!("{of} {width} pixels wide").as_bytes()),
        })
        .into()
}

impl Cast {
    /// A pre-production round of one piece that nothing keeps from being sealed.
    pub async fn ready_to_seal(&self) -> RoundId {
        self.ready_to_seal_with(&self.sao_mai).await
    }

    /// The same with another factory.
    pub async fn ready_to_seal_with(&self, factory: &Factory) -> RoundId {
        let brand = &self.brand;
        for thing in factory.to_approve().await {
            let option = factory.submits(&thing, "As asked").await.unwrap();
            brand.judges(&option, Verdict::Approved, "").await.unwrap();
        }
        approved_round(brand, factory, Kind::SizeSet, Materials::Actual).await;
        approved_round(brand, factory, Kind::PreProduction, Materials::Actual).await
    }

    /// The owner seals the first pieces of a round, for the factory to keep: seal number and place.
    pub async fn seals(
        &self,
        round: &RoundId,
        keep: &[(&str, &str)],
    ) -> Result<SealId, StoreError> {
        let owner = &self.brand.owner;
        let pieces = self.brand.rounds().await.into_iter();
        let pieces: Vec<_> = pieces
            .filter(|it| it.id == *round)
            .flat_map(|it| it.pieces)
            .collect();
        let keep = keep.iter().zip(&pieces);
        let keep = keep.map(|((tag, place), piece)| Keep {
            piece: &piece.id,
            tag,
            keeper: Side::Factory,
            place,
        });
        let keep: Vec<Keep<'_>> = keep.collect();
        let permit = owner.on(&self.brand.style).await;
        self.store.seal(&permit, round, &keep).await
    }
}

/// A round of one piece of size M that came out as asked and was approved.
pub async fn approved_round(
    brand: &Brand,
    factory: &Factory,
    kind: Kind,
    materials: Materials,
) -> RoundId {
    let round = brand.requests_a(kind, factory, &["size-m"]).await.unwrap();
    factory.starts(&round).await.unwrap();
    let typed = [(1, "point-a", "21 1/2"), (1, "point-c", "28 1/2")];
    factory.measures(&round, &typed).await.unwrap();
    factory.dispatches_as(&round, materials).await.unwrap();
    brand.receives(&round).await.unwrap();
    brand.finishes_measuring(&round).await.unwrap();
    let decided = brand.decides(&round, Outcome::Approved, "", &[]);
    decided.await.unwrap();
    round
}

/// A round that was made, measured by the factory and received: the brand may decide it.
pub async fn measured_round(
    brand: &Brand,
    factory: &Factory,
    sizes: &[&str],
    typed: &[(u32, &str, &str)],
) -> RoundId {
    let round = brand.requests(factory, sizes).await.unwrap();
    factory.starts(&round).await.unwrap();
    factory.measures(&round, typed).await.unwrap();
    factory.dispatches(&round).await.unwrap();
    brand.receives(&round).await.unwrap();
    brand.finishes_measuring(&round).await.unwrap();
    round
}
