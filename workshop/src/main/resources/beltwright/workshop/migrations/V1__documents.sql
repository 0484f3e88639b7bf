-- The same on SQLite and PostgreSQL. Nothing is kept here that cannot be rebuilt from the canonical text.
create table document (
    id varchar(60) not null primary key,
    type varchar(20) not null,
    sha256 char(64) not null,
    canonical_text text not null
);
