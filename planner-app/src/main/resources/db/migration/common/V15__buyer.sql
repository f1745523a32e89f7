-- Cores and claims that were sent, and what the supplier answered.
create sequence unit_return_seq start with 1 increment by 1000;
create table unit_return (
    id bigint not null,
    what varchar(20) not null,
    truck varchar(60) not null,
    cylinder integer not null,
    fitted_on date not null,
    fitting integer not null,
    document varchar(60) not null,
    sent_on date not null,
    sent_by varchar(60) not null,
    amount numeric(17, 4) not null,
    settled_on date,
    settled_by varchar(60),
    credit numeric(17, 4),
    reason varchar(2000) not null,
    primary key (id),
    constraint unit_return_one1 unique (truck, fitted_on, cylinder, fitting, what),
    constraint unit_return_of1 foreign key (truck) references truck (truck),
    constraint unit_return_fits1 check (what in ('CORE', 'CLAIM')),
    constraint unit_return_fits2 check ((settled_on is null) = (credit is null))
);
create index unit_return_document on unit_return (document);

-- Where a supplier gets its orders, and whether they are mailed.
create table supplier_contact (
    supplier varchar(60) not null,
    mail varchar(254) not null,
    address varchar(2000) not null,
    customer_number varchar(60) not null,
    mails_orders boolean not null,
    changed_at timestamp(6) with time zone not null,
    changed_by varchar(100) not null,
    primary key (supplier)
);

-- The head of an order of the site's own series; its lines are rows of purchase_line.
create table order_document (
    order_number varchar(60) not null,
    supplier varchar(60) not null,
    placed_on date not null,
    placed_at timestamp(6) with time zone not null,
    placed_by varchar(100) not null,
    note varchar(2000) not null,
    split_from varchar(60),
    mailed_to varchar(254),
    primary key (order_number)
);

-- What happened to an order, line by line, as its page tells it.
create sequence order_event_seq start with 1 increment by 1000;
create table order_event (
    id bigint not null,
    order_number varchar(60) not null,
    what varchar(200) not null,
    words varchar(4000) not null,
    done_at timestamp(6) with time zone not null,
    done_by varchar(100) not null,
    primary key (id)
);
create index order_event_order on order_event (order_number, id);

-- A delivery that was short, wrong or damaged: a claim, or a new line that brings the pieces.
create table delivery_problem (
    number varchar(60) not null,
    order_number varchar(60) not null,
    part varchar(60) not null,
    depot varchar(60) not null,
    kind varchar(20) not null,
    pieces double precision not null,
    words varchar(2000) not null,
    amount numeric(17, 4) not null,
    noted_on date not null,
    noted_by varchar(100) not null,
    new_line varchar(60),
    sent_on date,
    sent_by varchar(100),
    settled_on date,
    settled_by varchar(100),
    credit numeric(17, 4),
    reason varchar(2000) not null,
    primary key (number),
    constraint delivery_problem_of1 foreign key (part) references part (part),
    constraint delivery_problem_of2 foreign key (depot) references depot (depot),
    constraint delivery_problem_fits1 check (kind in ('SHORT', 'WRONG', 'DAMAGED')),
    constraint delivery_problem_fits2 check (pieces > 0),
    constraint delivery_problem_fits3 check ((settled_on is null) = (credit is null))
);

-- Every change of a stock line, with who and why: opening plus movements is closing.
create sequence stock_movement_seq start with 1 increment by 1000;
create table stock_movement (
    id bigint not null,
    depot varchar(60) not null,
    part varchar(60) not null,
    pieces double precision not null,
    on_hand double precision not null,
    kind varchar(20) not null,
    document varchar(200) not null,
    why varchar(2000) not null,
    moved_at timestamp(6) with time zone not null,
    moved_by varchar(100) not null,
    primary key (id)
);
create index stock_movement_of on stock_movement (depot, part, id);
insert into stock_movement (id, depot, part, pieces, on_hand, kind, document, why, moved_at, moved_by)
    select -id, depot, part, on_hand, on_hand, 'OPENING', '', 'on hand when movements began', current_timestamp, 'system'
    from stock where on_hand <> 0;

-- Stock that was counted: what was expected, what was there, why it differs.
create table stocktake (
    number varchar(60) not null,
    depot varchar(60) not null,
    counted_on date not null,
    posted_at timestamp(6) with time zone not null,
    posted_by varchar(100) not null,
    primary key (number),
    constraint stocktake_of1 foreign key (depot) references depot (depot)
);
create table stocktake_line (
    stocktake varchar(60) not null,
    part varchar(60) not null,
    expected double precision not null,
    counted double precision not null,
    reason varchar(2000) not null,
    primary key (stocktake, part),
    constraint stocktake_line_of1 foreign key (stocktake) references stocktake (number),
    constraint stocktake_line_of2 foreign key (part) references part (part),
    constraint stocktake_line_fits1 check (expected >= 0 and counted >= 0)
);

-- Return notes, claims and stocktakes have number series of their own.
insert into order_series (id, next_number) values (2, 1);
insert into order_series (id, next_number) values (3, 1);
insert into order_series (id, next_number) values (4, 1);

-- The storeman is a role of its own.
alter table person_role drop constraint person_role_fits1;
alter table person_role add constraint person_role_fits1
    check (role in ('MANAGER', 'BUYER', 'STOREMAN', 'MECHANIC', 'ADMINISTRATOR'));
