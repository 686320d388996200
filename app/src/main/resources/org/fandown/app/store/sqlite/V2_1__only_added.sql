-- Rows are only ever added, also by "insert or replace".
create trigger record_never_changes before update on record
begin
    select raise(abort, 'A record is never changed.');
end;

create trigger record_never_goes before delete on record
begin
    select raise(abort, 'A record is never deleted.');
end;

create trigger record_never_replaced before insert on record
when exists (select 1 from record where number = new.number or id = new.id)
begin
    select raise(abort, 'A record is never changed.');
end;

create trigger seal_never_changes before update on seal
begin
    select raise(abort, 'A seal is never changed.');
end;

create trigger seal_never_goes before delete on seal
begin
    select raise(abort, 'A seal is never deleted.');
end;

create trigger seal_never_replaced before insert on seal
when exists (select 1 from seal where number = new.number)
begin
    select raise(abort, 'A seal is never changed.');
end;
