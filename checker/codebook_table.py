"""Generated from rules/codebook/*.yaml by `python -m checker.generate`; do not edit."""

from typing import Any

from checker.codebook import Entry

TABLE: dict[str, tuple[Any, ...]] = {'bath-exhaust-continuous': ('local exhaust from a bath or toilet room that runs all the time',
                             'airflow',
                             '20 cfm',
                             {'irc-2015': 'Table M1507.4',
                              'irc-2018': 'Table M1505.4.4',
                              'irc-2021': 'Table M1505.4.4',
                              'irc-2024': 'Table M1505.5'},
                             'code',
                             'read in public copies of the four editions'),
 'bath-exhaust-on-demand': ('local exhaust from a bath or toilet room that runs on demand',
                            'airflow',
                            '50 cfm',
                            {'irc-2015': 'Table M1507.4',
                             'irc-2018': 'Table M1505.4.4',
                             'irc-2021': 'Table M1505.4.4',
                             'irc-2024': 'Table M1505.5'},
                            'code',
                            'read in public copies of the four editions'),
 'balance-tolerance': ('in a balanced system supply and exhaust differ by no more than a tenth of the larger',
                       'share',
                       '10 %',
                       'common practice',
                       'common practice',
                       'usual tolerance of balancing reports; some jurisdictions adopt the same figure')}

ENTRIES = {key: Entry(*entry) for key, entry in TABLE.items()}
