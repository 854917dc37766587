-- Jobs with anything beyond or not proven, by vehicle, over years. The same words for DuckDB and SQLite.
-- `rows_of_records` holds the tables' rows as they are: every column a text.
with each_row_once as (
  select distinct * from rows_of_records where tryout = 'false'
),
by_record as (
  select
    *,
    -- A job that was handed over more than once counts as it was the last time.
    dense_rank() over (
      partition by vehicle, heater, job_created_at
      order by job_changed_at desc, record_sha256
    ) as times_ago
  from each_row_once
),
jobs as (
  select
    coalesce(vehicle, '') as vehicle,
    substr(job_created_at, 1, 4) as year,
    max(case when verdict = 'beyond' then 1 else 0 end) as beyond,
    max(case when verdict in ('not_proven', 'none') then 1 else 0 end) as not_proven,
    max(case when verdict in ('not_checked', 'not_seen') then 1 else 0 end) as not_checked
  from by_record
  where times_ago = 1
  group by vehicle, heater, job_created_at
)
select
  vehicle,
  year,
  count(*) as jobs,
  sum(beyond) as with_beyond,
  sum(not_proven) as with_not_proven,
  sum(case when beyond + not_proven > 0 then 1 else 0 end) as with_either,
  sum(not_checked) as with_something_not_checked
from jobs
group by vehicle, year
order by vehicle, year;
