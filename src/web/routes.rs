//! The whole table of pages. Everything that is not in the short list of public ones needs a
//! live session, before any handler's own permit.

use axum::Router;
use axum::extract::{DefaultBodyLimit, MatchedPath, Request, State};
use axum::http::Method;
use axum::middleware::{Next, from_fn, from_fn_with_state};
use axum::response::{IntoResponse, Response};
use axum::routing::{MethodRouter, get, post};
use tower::ServiceBuilder;
use tower_http::catch_panic::CatchPanicLayer;
use tower_http::compression::CompressionLayer;
use tower_http::compression::predicate::{DefaultPredicate, NotForContentType, Predicate};
use tower_http::trace::TraceLayer;

use super::problem::Problem;
use super::visit::{Visitor, dress};
use super::{App, assets, both, brand, entry, factory, form, headers, health, needs, people};

/// One page or act: a method, a path and who answers.
pub struct Route {
    pub method: Method,
    pub path: &'static str,
    /// Answers people who are not signed in.
    pub public: bool,
    answer: MethodRouter<App>,
}

macro_rules! routes {
    ($($access:ident { $($method:ident $path:literal $handler:path,)* })*) => {
        /// Every route there is.
        pub fn table() -> Vec<Route> {
            vec![$($(
                Route {
                    method: routes!(@method $method),
                    path: $path,
                    public: routes!(@public $access),
                    answer: $method($handler),
                },
            )*)*]
        }
    };
    (@method get) => { Method::GET };
    (@method post) => { Method::POST };
    (@public public) => { true };
    (@public signed_in) => { false };
}

routes! {
    public {
        get "/healthz" health::show,
        get "/static/{file}" assets::show,
        get "/sign-in" entry::sign_in::show,
        post "/sign-in" entry::sign_in::submit,
        get "/set-up/{key}" entry::set_up::show,
        post "/set-up/{key}" entry::set_up::submit,
        get "/join/{key}" entry::join::show,
        post "/join/{key}" entry::join::submit,
        get "/p/{code}" both::now::show,
        get "/code" entry::code::show,
        post "/code" entry::code::submit,
    }
    signed_in {
        get "/" needs::show,
        post "/sign-out" entry::sign_out::submit,
        post "/sign-out-everywhere" entry::sign_out::everywhere,
        get "/me" entry::me::show,
        post "/me" entry::me::submit,
        post "/me/password" entry::me::password,
        post "/me/code" entry::me::code,
        post "/me/mail" entry::me::mail,
        get "/numbers" brand::numbers::show,
        post "/numbers" brand::numbers::save,
        get "/wordings" brand::wordings::show,
        post "/wordings" brand::wordings::forget,
        get "/tables" brand::tables::show_all,
        get "/tables/{table}" brand::tables::show,
        get "/tables/{table}/{row}" brand::tables::show_row,
        post "/tables/{table}/{row}" brand::tables::save_row,
        get "/people" people::show,
        post "/people" people::add,
        post "/people/{person}/link" people::link,
        post "/people/{person}/end" people::end,
        post "/factories" people::add_factory,
        get "/styles" brand::styles::show,
        post "/styles" brand::styles::create,
        get "/styles/{style}/history/{section}" brand::history::show,
        post "/styles/{style}/history/{section}" brand::history::restore,
        post "/styles/{style}/start" brand::starts::keep,
        get "/styles/{style}/copy" brand::copy::show,
        post "/styles/{style}/copy" brand::copy::submit,
        get "/styles/{style}/draft/changes" brand::draft::changes::show,
        get "/styles/{style}/draft/{section}" brand::draft::show,
        post "/styles/{style}/draft/{section}" brand::draft::save,
        get "/styles/{style}/translations" brand::translations::show,
        post "/styles/{style}/translations" brand::translations::save,
        get "/styles/{style}/publish" brand::publish::show,
        post "/styles/{style}/publish" brand::publish::submit,
        get "/styles/{style}/revisions/{number}" both::revision::show,
        get "/styles/{style}/revisions/{number}/document" both::revision::document,
        post "/styles/{style}/revisions/{number}/acknowledge" factory::acknowledge::submit,
        post "/styles/{style}/revisions/{number}/sign" both::sign::submit,
        get "/styles/{style}/revisions/{number}/changes" both::changes::show,
        get "/styles/{style}/revisions/{number}/record" both::record::revision,
        get "/styles/{style}/revisions/{number}/record/file" both::record::revision_file,
        get "/styles/{style}/rounds/{round}/record" both::record::round,
        get "/styles/{style}/rounds/{round}/record/file" both::record::round_file,
        get "/styles/{style}" both::style::show,
        post "/styles/{style}/share" both::style::share,
        post "/styles/{style}/unshare" both::style::unshare,
        post "/styles/{style}/revisions/{number}/withdraw" both::style::withdraw,
        get "/styles/{style}/approvals" both::approvals::show,
        post "/styles/{style}/approvals" both::approvals::submit,
        post "/styles/{style}/approvals/limit" both::approvals::set_limit,
        post "/styles/{style}/approvals/{submission}/decide" both::approvals::decide,
        get "/styles/{style}/rounds/new" brand::new_round::show,
        post "/styles/{style}/rounds" brand::new_round::submit,
        get "/styles/{style}/rounds/{round}" both::round::show,
        post "/styles/{style}/rounds/{round}/move" factory::round::submit_move,
        post "/styles/{style}/rounds/{round}/receive" brand::round::receive,
        post "/styles/{style}/rounds/{round}/continue" brand::round::go_on,
        post "/styles/{style}/rounds/{round}/restart" brand::round::restart,
        get "/styles/{style}/rounds/{round}/measure" both::measure::show,
        post "/styles/{style}/rounds/{round}/measure" both::measure::submit,
        get "/styles/{style}/rounds/{round}/readings" both::readings::show,
        post "/styles/{style}/rounds/{round}/readings" both::readings::submit,
        post "/styles/{style}/rounds/{round}/photographs" both::round::photograph,
        post "/styles/{style}/rounds/{round}/decide" brand::round::decide,
        post "/styles/{style}/rounds/{round}/sign" both::round::submit_signature,
        get "/styles/{style}/rounds/{round}/seal" both::sealing::show,
        post "/styles/{style}/rounds/{round}/seal" both::sealing::submit,
        get "/styles/{style}/seals/{seal}" both::seal::show,
        post "/styles/{style}/seals/{seal}/sign" both::seal::submit_signature,
        get "/styles/{style}/seals/{seal}/inspect" both::inspection::begin::show,
        post "/styles/{style}/seals/{seal}/inspect" both::inspection::begin::submit,
        get "/styles/{style}/inspections/{inspection}" both::inspection::show,
        get "/styles/{style}/inspections/{inspection}/piece" both::inspection::piece::show,
        post "/styles/{style}/inspections/{inspection}/piece" both::inspection::piece::submit,
        post "/styles/{style}/inspections/{inspection}/conclude" both::inspection::conclude,
        post "/styles/{style}/inspections/{inspection}/decide" both::inspection::decide,
        get "/styles/{style}/seals/{seal}/record" both::record::seal,
        get "/styles/{style}/seals/{seal}/record/file" both::record::seal_file,
        get "/styles/{style}/draft/{section}/{item}" brand::draft::one::show,
        post "/styles/{style}/draft/{section}/{item}" brand::draft::one::save,
        post "/styles/{style}/draft/{section}/{item}/preview" brand::draft::one::preview,
        post "/styles/{style}/draft/{section}/preview" brand::draft::listed::preview,
        get "/styles/{style}/draft/colourways/{colourway}/{part}" brand::draft::colour::show,
        post "/styles/{style}/draft/colourways/{colourway}/{part}" brand::draft::colour::save,
        get "/styles/{style}/draft/conflict/{save}" brand::draft::conflict::show,
        post "/styles/{style}/draft/conflict/{save}" brand::draft::conflict::submit,
        post "/styles/{style}/draft/{section}/here" brand::draft::here::say,
        get "/styles/{style}/draft/points/copy" brand::draft::copy_points::show,
        post "/styles/{style}/draft/points/copy" brand::draft::copy_points::submit,
        post "/styles/{style}/draft/points/grade" brand::draft::regrade::live,
        post "/styles/{style}/draft/points/letters" brand::draft::lettering::live,
        get "/styles/{style}/draft/{section}/import" brand::draft::import::show,
        post "/styles/{style}/draft/{section}/import" brand::draft::import::submit,
        get "/styles/{style}/draft/sheets/{file}" both::export::draft,
        get "/styles/{style}/revisions/{number}/sheets/{file}" both::export::revision,
        get "/styles/{style}/draft/archive" both::archive::draft,
        get "/styles/{style}/revisions/{number}/archive" both::archive::revision,
        get "/styles/{style}/draft/print" both::print::draft,
        get "/styles/{style}/draft/paper" both::print::draft_paper,
        get "/styles/{style}/revisions/{number}/print" both::print::show,
        get "/styles/{style}/revisions/{number}/paper" both::print::paper,
        get "/live" both::live::all,
        get "/styles/{style}/live" both::live::style,
        get "/styles/{style}/revisions/{number}/items/{item}" both::item::show,
        post "/styles/{style}/revisions/{number}/items/{item}" both::item::ask,
        get "/styles/{style}/threads/{thread}" both::threads::show,
        post "/styles/{style}/threads/{thread}/messages" both::threads::say,
        post "/styles/{style}/threads/{thread}/messages/{message}/translation" both::threads::said::translate,
        post "/styles/{style}/threads/{thread}/move" both::threads::step,
        get "/styles/{style}/threads/{thread}/ready" both::ready::show,
        post "/styles/{style}/threads/{thread}/ready" both::ready::say,
        get "/styles/{style}/revisions/{number}/items/{item}/ready" both::ready::show_new,
        post "/styles/{style}/revisions/{number}/items/{item}/ready" both::ready::ask,
        get "/styles/{style}/ledger" both::ledger::show,
        get "/styles/{style}/files/{file}" both::files::original,
        get "/styles/{style}/files/{file}/{width}" both::files::picture,
    }
}

/// The service.
pub fn router(app: App) -> Router {
    let mut public = Router::new();
    let mut signed_in = Router::new();
    for route in table() {
        if route.public {
            public = public.route(route.path, route.answer);
        } else {
            signed_in = signed_in.route(route.path, route.answer);
        }
    }
    let trace = TraceLayer::new_for_http().make_span_with(|request: &Request| {
        // The pattern, not the address: addresses of ways in carry tokens.
        let path = request.extensions().get::<MatchedPath>();
        let path = path.map_or("-", MatchedPath::as_str);
        tracing::info_span!("request", method = %request.method(), path)
    });
    // An archive and a print are pressed already.
    let pressed = DefaultPredicate::new()
        .and(NotForContentType::new("application/zip"))
        .and(NotForContentType::new("application/pdf"));
    public
        .merge(signed_in.route_layer(from_fn(must_be_signed_in)))
        .fallback(nothing)
        .method_not_allowed_fallback(nothing)
        .layer(
            ServiceBuilder::new()
                .layer(trace)
                .layer(CompressionLayer::new().gzip(true).compress_when(pressed))
                .layer(from_fn(headers::protect))
                .layer(from_fn_with_state(app.clone(), dress))
                .layer(CatchPanicLayer::custom(
                    |panic: Box<dyn std::any::Any + Send>| {
                        let cause = panic
                            .downcast_ref::<String>()
                            .map(String::as_str)
                            .or_else(|| panic.downcast_ref::<&str>().copied())
                            .unwrap_or("a panic without words");
                        Problem::fault(&cause).into_response()
                    },
                ))
                .layer(DefaultBodyLimit::max(form::UPLOAD_LIMIT)),
        )
        .with_state(app)
}

async fn must_be_signed_in(request: Request, next: Next) -> Response {
    if Visitor::of(request.extensions()).visit.is_none() {
        return Problem::SignIn.into_response();
    }
    next.run(request).await
}

/// There is no such page; whoever is not signed in learns no more than that they are not.
async fn nothing(State(_): State<App>, request: Request) -> Problem {
    if Visitor::of(request.extensions()).visit.is_none() {
        Problem::SignIn
    } else {
        Problem::NotFound
    }
}
