### Readiness checks: one sentence a code, check-<code>.
