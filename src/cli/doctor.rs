//! Looks at the machine and its settings: which languages can be printed here, and whether phones can
//! open the measuring page again without a connection.

use std::process::ExitCode;

use clap::Args;

use crate::print::paper::fonts::Fonts;

#[derive(Debug, Args)]
pub struct Doctor {
    /// The address that people open, as `serve` is given it.
    #[arg(long, value_name = "URL", env = "FELLSEAM_PUBLIC_URL")]
    public_url: Option<String>,
}

pub fn run(doctor: &Doctor) -> ExitCode {
    println!("offline: {}", offline(doctor.public_url.as_deref()));
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

/// Whether the measuring page opens again without a connection: browsers keep pages under HTTPS alone.
fn offline(public_url: Option<&str>) -> &'static str {
    match public_url {
        Some(url) if url.starts_with("https://") => {
            "the measuring page opens again without a connection"
        }
        Some(_) => {
            "the address is plain: the measuring page does not open again without a connection \
             (what is typed is kept all the same). Put a reverse proxy with HTTPS in front."
        }
        None => {
            "no public address is given. With a plain one the measuring page does not open again \
             without a connection; with HTTPS it does."
        }
    }
}
