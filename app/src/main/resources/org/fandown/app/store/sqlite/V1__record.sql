-- What devices send to be kept. Rows are only ever added.
create table record (
    number   integer primary key autoincrement,
    id       text not null unique,
    kind     text not null,
    made     text not null,
    received text not null,
    place    text not null,
    vehicle  text not null,
    verdict  text not null,
    words    text not null,
    content  text not null,
    hash     text not null
);

create index record_made on record (made);

create trigger record_stays before update on record
begin
    select raise(abort, 'A record is never changed.');
end;

create trigger record_is_kept before delete on record
begin
    select raise(abort, 'A record is never deleted.');
end;
