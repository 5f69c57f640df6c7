FROM rust:1.95-bookworm AS build
WORKDIR /build
COPY . .
RUN cargo build --profile dist --locked --bin fellseam

FROM debian:bookworm-slim
RUN apt-get update \
    && apt-get install -y --no-install-recommends ca-certificates curl fonts-dejavu-core fonts-noto-core fonts-noto-cjk \
    && rm -rf /var/lib/apt/lists/* \
    && useradd --system --uid 10001 --home-dir /data fellseam \
    && install -d -o fellseam -g fellseam /data
COPY --from=build /build/target/dist/fellseam /usr/local/bin/fellseam
ENV FELLSEAM_DATA=/data FELLSEAM_LISTEN=0.0.0.0:8640
USER fellseam
VOLUME /data
EXPOSE 8640
HEALTHCHECK --interval=15s --timeout=5s --start-period=20s \
    CMD curl -fsS http://127.0.0.1:8640/healthz || exit 1
ENTRYPOINT ["fellseam"]
CMD ["serve"]
