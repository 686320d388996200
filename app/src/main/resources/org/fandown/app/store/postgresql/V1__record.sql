-- What devices send to be kept. Rows are only ever added.
create table record (
    number   bigint generated always as identity primary key,
    id       text not null unique,
    kind     text not null,
    made     text collate "C" not null,
    received text not null,
    place    text not null,
    vehicle  text not null,
    verdict  text not null,
    words    text not null,
    content  text not null,
    hash     text not null
);

create index record_made on record (made);

create function record_stays() returns trigger language plpgsql as $$
begin
    if tg_op = 'UPDATE' then
        raise exception 'A record is never changed.';
    end if;
    raise exception 'A record is never deleted.';
end $$;

create trigger record_stays before update or delete on record
    for each row execute function record_stays();

create trigger record_is_kept before truncate on record
    for each statement execute function record_stays();
