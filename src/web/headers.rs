//! What every answer says about itself.

use axum::extract::Request;
use axum::http::{HeaderName, HeaderValue, header};
use axum::middleware::Next;
use axum::response::Response;

/// Nothing inline, nothing from elsewhere, never inside a frame.
const POLICY: &str = "default-src 'none'; script-src 'self'; style-src 'self'; \
    img-src 'self' blob:; font-src 'self'; connect-src 'self'; form-action 'self'; \
    manifest-src 'self'; worker-src 'self'; frame-ancestors 'none'; base-uri 'none'";

/// Sets what the handler has not set itself.
pub async fn protect(request: Request, next: Next) -> Response {
    let mut response = next.run(request).await;
    let headers = response.headers_mut();
    let mut default = |name: HeaderName, value: &'static str| {
        headers
            .entry(name)
            .or_insert(HeaderValue::from_static(value));
    };
    default(header::CONTENT_SECURITY_POLICY, POLICY);
    default(header::X_CONTENT_TYPE_OPTIONS, "nosniff");
    default(header::X_FRAME_OPTIONS, "DENY");
    // Addresses of ways in carry tokens; nobody is told where a reader came from.
    default(header::REFERRER_POLICY, "no-referrer");
    default(header::CACHE_CONTROL, "private, no-cache");
    default(
        HeaderName::from_static("cross-origin-opener-policy"),
        "same-origin",
    );
    default(
        HeaderName::from_static("permissions-policy"),
        "camera=(self), geolocation=(), microphone=()",
    );
    response
}
