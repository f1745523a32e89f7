-- Forms of a diagnosis that arrived: one that is sent again, by a phone that was without network, changes nothing.

create table bay_look_form (
    form_key varchar(100) not null,
    truck varchar(60) not null,
    kind varchar(20) not null,
    did varchar(20) not null,
    sent_at timestamp(6) with time zone not null,
    primary key (form_key),
    constraint bay_look_form_of1 foreign key (truck) references truck (truck)
);
