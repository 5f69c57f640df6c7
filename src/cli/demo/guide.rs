//! The words that a start of the demo prints: where it is, ways in, and what to try.

use super::Failed;
use super::cast::{BRAND, Person};
use crate::access::Role;
use crate::spec::PersonId;
use crate::store::Store;

/// What to try; each line fits into 80 columns with its number.
const WALK: [&str; 6] = [
    "Meghna, merchandiser: acknowledge the shorts, tap a letter, ask about it.",
    "Designer: answer. Mend the rain jacket by its checks, publish it, share it.",
    "Sao Mai, sample room: measure the rest of the half-zip's proto.",
    "Sao Mai, merchandiser: dispatch it, close the question on B, sign.",
    "Designer: receive the proto, decide it, sign, and read the ledger.",
    "Meghna, inspector: look at the rest of the second lot of the Dune shorts.",
];

/// A fresh link for everybody who is to be tried out, with the owner's permit.
pub async fn guide(store: &Store, owner: &PersonId, url: &str) -> Result<String, Failed> {
    let owner = Person::of(store, owner).await?;
    let permit = owner.may()?;
    let mut text = format!(
        "\n{BRAND}, two factories and four styles, all invented.\n\n  {url}\n\n\
         Each link signs one person in, once. Open two of them in two browsers, or in\n\
         one browser and a private window of it.\n\n"
    );
    for person in store.people(&permit).await? {
        let role = match person.role {
            Role::Designer => "Designer",
            Role::Merchandiser => "Merchandiser",
            Role::SampleRoom => "Sample room",
            Role::Inspector => "Inspector",
            Role::Owner | Role::Viewer => continue,
        };
        if person.left_at.is_some() {
            continue;
        }
        let link = store.new_link(&permit, &person.id).await?;
        let name = person.name.unwrap_or_default();
        text.push_str(&format!(
            "{role}, {}: {name}\n  {url}/join/{link}\n",
            person.org_name
        ));
    }
    text.push_str("\nWhat to try:\n");
    for (number, line) in (1..).zip(WALK) {
        text.push_str(&format!("{number}. {line}\n"));
    }
    text.push_str("\nCtrl-C stops it. A new start finds everything again and prints new links.\n");
    Ok(text)
}
