-- Who may log in. Accounts are closed, never deleted.
create table account (
    number   bigint generated always as identity primary key,
    name     text not null,
    name_key text not null unique,
    role     text not null,
    password text not null,
    made     text not null,
    closed   text not null
);

create function account_stays() returns trigger language plpgsql as $$
begin
    raise exception 'An account is closed, never deleted.';
end $$;

create trigger account_stays before delete on account
    for each row execute function account_stays();

create trigger account_is_kept before truncate on account
    for each statement execute function account_stays();

-- Who is logged in: the SHA-256 of the token that the device has; moments in ms since 1970.
create table session (
    hash    text primary key,
    account bigint not null references account (number),
    began   bigint not null,
    used    bigint not null
);

create index session_account on session (account);

-- Who did what. Rows are only ever added.
create table audit (
    number bigint generated always as identity primary key,
    moment text not null,
    who    text not null,
    act    text not null,
    about  text not null,
    source text not null,
    result text not null
);

create function audit_stays() returns trigger language plpgsql as $$
begin
    if tg_op = 'UPDATE' then
        raise exception 'The audit trail is never changed.';
    end if;
    raise exception 'The audit trail is never shortened.';
end $$;

create trigger audit_stays before update or delete on audit
    for each row execute function audit_stays();

create trigger audit_is_kept before truncate on audit
    for each statement execute function audit_stays();
