/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PersonalTextTest {

    @ParameterizedTest
    @ValueSource(strings = { "Calcified bend of the left anterior descending artery",
        "6 Fr guide, 2.50 x 15 mm balloon",
        "Second try at 14 atm, 3 x 30 s", "0.014 in wire, 190 cm", "Right coronary, segment 2-3",
        "Proximal: 3.2 mm, distal: 2.5 mm", "radial access, 70 % at 12/14 atm", "drained", "1500 mGy by 11:40",
        "Patient comfortable throughout", "about 1/3 of 2.5 mm", "balloons 2.0-2.5 mm" })
    void findsNothingInTheWordsOfTheTrade(String text) {
        assertEquals(Optional.empty(), PersonalText.find(text));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            asked by Mrs Example-Person twice | Mrs Example-Person  | a name
            Dr. \u00D6zg\u00FCr agreed                | Dr. \u00D6zg\u00FCr           | a name
            patient: Example, Anybody         | patient: Example, Anybody | a name
            seen 4/5/1950                     | 4/5/1950            | a date
            seen 4.5.50                       | 4.5.50              | a date
            since 1950-05-04 in               | 1950-05-04          | a date
            file 0012345                      | 0012345             | a number of a person or a file
            no 123-45-6789                    | 123-45-6789         | a number of a person or a file
            a man born in the hills           | born                | personal data
            DOB unknown                       | DOB                 | personal data
            """)
    void findsWhatCouldTellWhoSomebodyIs(String text, String part, String what) {
        PersonalText found = PersonalText.find(text).orElseThrow();
        assertEquals(part, text.substring(found.start(), found.end()));
        assertEquals(what, found.what());
    }
}
