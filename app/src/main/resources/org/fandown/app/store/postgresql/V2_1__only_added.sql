-- Rows are only ever added.
create function only_added() returns trigger language plpgsql as $$
begin
    raise exception 'A % is never %.', tg_table_name,
        case tg_op when 'UPDATE' then 'changed' else 'deleted' end;
end $$;

create trigger record_never_changes before update or delete on record
    for each row execute function only_added();

create trigger record_never_emptied before truncate on record
    for each statement execute function only_added();

create trigger seal_never_changes before update or delete on seal
    for each row execute function only_added();

create trigger seal_never_emptied before truncate on seal
    for each statement execute function only_added();
