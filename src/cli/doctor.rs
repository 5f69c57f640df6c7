//! Looks at the machine: which languages can be printed here.

use std::process::ExitCode;

use crate::print::paper::fonts::Fonts;

pub fn run() -> ExitCode {
    let stock = Fonts::of_this_machine().stock();
    for it in &stock {
        let language = it.language;
        let (tag, name) = (language.tag(), language.own_name());
        match (&it.family, it.package) {
            (Some(family), _) => println!("print {tag} ({name}): {family}"),
            (None, package) => println!(
                "print {tag} ({name}): no font. Install one: apt install {}",
                package.unwrap_or_default()
            ),
        }
    }
    match stock.iter().all(|it| it.family.is_some()) {
        true => ExitCode::SUCCESS,
        false => ExitCode::FAILURE,
    }
}
