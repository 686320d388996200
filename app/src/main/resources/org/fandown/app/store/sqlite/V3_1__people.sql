-- Who may log in. Accounts are closed, never deleted.
create table account (
    number   integer primary key autoincrement,
    name     text not null,
    name_key text not null unique,
    role     text not null,
    password text not null,
    made     text not null,
    closed   text not null
);

create trigger account_stays before delete on account
begin
    select raise(abort, 'An account is closed, never deleted.');
end;

-- Who is logged in: the SHA-256 of the token that the device has; moments in ms since 1970.
create table session (
    hash    text primary key,
    account integer not null references account (number),
    began   integer not null,
    used    integer not null
);

create index session_account on session (account);

-- Who did what. Rows are only ever added.
create table audit (
    number integer primary key autoincrement,
    moment text not null,
    who    text not null,
    act    text not null,
    about  text not null,
    source text not null,
    result text not null
);

create trigger audit_stays before update on audit
begin
    select raise(abort, 'The audit trail is never changed.');
end;

create trigger audit_is_kept before delete on audit
begin
    select raise(abort, 'The audit trail is never shortened.');
end;
