//! What stands beside a form: the item that is being written, drawn to scale or worked out. It is
//! made here when the page is, and again while somebody types: there is no arithmetic in the script.

mod callout;
mod material;
mod packing;

use askama::Template;

use self::callout::CalloutPlate;
use self::material::MaterialPlate;
use self::packing::PackingPlate;
use crate::access::{StylePermit, act};
use crate::language::Text;
use crate::spec::label::compose;
use crate::spec::units::DecimalSign;
use crate::spec::{Graded, Item, ItemId, Section, Spec, StyleId, grade};
use crate::store::StyleFile;
use crate::web::App;
use crate::web::plates::Bench;
use crate::web::plates::artwork::ArtworkPlate;
use crate::web::plates::label::LabelPlate;
use crate::web::problem::Problem;

/// What a draft's plates are made from.
pub struct Beside {
    t: Text,
    style: StyleId,
    files: Vec<StyleFile>,
}

impl Beside {
    pub async fn of(
        app: &App,
        t: Text,
        permit: &StylePermit<act::Review>,
    ) -> Result<Beside, Problem> {
        Ok(Beside {
            t,
            style: permit.style().clone(),
            files: app.store.draft_files(permit).await?,
        })
    }

    /// Of an item, as HTML; nothing for items that nothing is drawn of.
    pub fn item(&self, spec: &Spec, id: &ItemId) -> Result<Option<String>, Problem> {
        let graded = grade(spec);
        let values = |point: &ItemId, size: &ItemId| value(spec, &graded, point, size);
        let bench = Bench {
            t: self.t,
            style: &self.style,
            spec,
            sign: DecimalSign::Point,
            values: &values,
            compose: &|market, language| compose(spec, market, language),
            files: &self.files,
        };
        Ok(match spec.item(id) {
            Some(Item::Artwork(artwork)) => Some(ArtworkPlate::of(bench, artwork).render()?),
            Some(Item::Label(label)) => Some(LabelPlate::of(bench, label).render()?),
            Some(Item::Callout(callout)) => Some(CalloutPlate::of(bench, callout).render()?),
            Some(Item::Material(material)) => Some(MaterialPlate::of(bench, material).render()?),
            _ => None,
        })
    }

    /// Of a whole section, as HTML; nothing for sections that nothing is worked out of.
    pub fn section(&self, spec: &Spec, section: Section) -> Result<Option<String>, Problem> {
        Ok(match section {
            Section::Packing => Some(PackingPlate::of(self.t, spec).render()?),
            _ => None,
        })
    }
}

/// A point's rounded value in a size.
fn value(
    spec: &Spec,
    graded: &Graded,
    point: &ItemId,
    size: &ItemId,
) -> Option<crate::spec::Length> {
    let column = spec.sizes.sizes.iter().position(|it| it.id == *size)?;
    graded.values(point)?.rounded.get(column).copied()
}
