-- Records as canonical JSON, each with a seal that links it to the record before at the site and to
-- the one before of the same vehicle. Numbers are given by the program, without gaps.
alter table record rename to record_1;

create table record (
    number    ${number} not null primary key,
    id        text not null unique,
    kind      text not null,
    made      text not null,
    place     text not null,
    vehicle   text not null,
    verdict   text not null,
    words     text not null,
    found_by  text not null,
    content   text not null,
    statement text not null
) ${end};

create index record_by_made on record (made, number);

create table seal (
    number         ${number} not null primary key references record (number),
    received       text not null,
    content_hash   text not null,
    statement_hash text not null,
    sender         text not null,
    chain          text not null,
    site_before    text not null,
    chain_before   text not null,
    hash           text not null
) ${end};

create index seal_by_chain on seal (chain, number);
