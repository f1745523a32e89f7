-- An alert of what must not wait is known by its fault code, so that muting a small leak leaves a large one loud. Alerts of
-- before take the first code that their evidence names in brackets: who has seen or muted them has seen or muted that.
update alert
set subject = substring(evidence from position('(' in evidence) + 1
            for position(')' in evidence) - position('(' in evidence) - 1),
    subject_key = substring(evidence from position('(' in evidence) + 1
            for position(')' in evidence) - position('(' in evidence) - 1)
where rule = 'SAFETY' and subject is null
    and position('(' in evidence) > 0 and position(')' in evidence) > position('(' in evidence) + 1;
