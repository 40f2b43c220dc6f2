/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.calc;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.ferrule.calc.input.ArgumentException;
import org.ferrule.calc.result.Calculation;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Answers that are a reason instead of a value, and arguments that are none. */
class RefusalTest {
    private static final String TABLE = "row: 6 atm = 2.90 mm | row: 8 atm = 3.00 mm | rated: 8 atm | ";

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            pressure: 8.1 atm   ; beyond rated burst ; 8.1 atm is beyond the rated burst pressure of 8 atm
            diameter: 3.1 mm    ; above table        ; 3.1 mm is above the last row of the table (3.00 mm)
            pressure: 5 atm     ; below table        ; 5 atm is below the first row of the table (6 atm)
            """)
    void tableSaysNothingBeyondItsRows(String asked, String code, String text) {
        assertRefused(Given.answer("inflate", TABLE + asked), code, text);
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            convert ; from: 19 G                                            ; gauge without its table ; without|means nothing
            convert ; from: 20gauge                                         ; gauge without its table ; mm or in
            bend    ; device: 2 mm | lumen: 2 mm | length: 5 mm             ; passes no bend       ; as thick as the lumen
            bend    ; device: 2 mm | lumen: 2 mm | radius: 30 mm            ; passes no bend       ; as thick as the lumen
            bend    ; device: 1.5 mm | lumen: 1.45 mm | radius: 30 mm       ; passes no bend       ; as thick as the lumen
            burst   ; n: 3 | mean: 20 atm | sd: 5 atm                       ; spreads too much     ; above zero
            flow    ; lumen: 0.070 in | device: 2.7 Fr | device: 2.7 Fr     ; do not fit together  ; need 1.8 mm
            """)
    void tellsWhyThereIsNoValue(String calculator, String arguments, String code, String text) {
        assertRefused(Given.answer(calculator, arguments), code, text.substring(text.indexOf('|') + 1));
    }

    private static void assertRefused(Calculation answer, String code, String text) {
        assertTrue(answer.value().isEmpty() && answer.interval().isEmpty());
        assertEquals(code, answer.refusal().orElseThrow().code());
        assertTrue(answer.refusal().orElseThrow().text().contains(text), () -> answer.refusal().toString());
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', nullValues = "-", textBlock = """
            bend    ; device: 1.25 | lumen: 1.45 mm | radius: 30 mm          ; device     ; 1.25     ; expected a unit
            bend    ; device: 1 mm max | lumen: 2 mm | radius: 30 mm         ; device     ; 1 mm max ; one plain length
            bend    ; device: 0 mm | lumen: 2 mm | radius: 30 mm             ; device     ; 0 mm     ; above 0 mm
            bend    ; lumen: 2 mm | radius: 30 mm                            ; device     ; -        ; is missing
            bend    ; device: 1 mm | radius: 30 mm                           ; lumen      ; -        ; two of lumen, radius and length
            bend    ; device: 1 mm | lumen: 2 mm                             ; radius     ; -        ; two of lumen, radius and length
            bend    ; device: 1 mm | lumen: 2 mm | radius: 0.9 mm            ; radius     ; 0.9 mm   ; half of the lumen
            bend    ; device: 1 mm | device: 2 mm | lumen: 2 mm              ; device     ; 2 mm     ; only once
            bend    ; device: 1 mm | lumen: 2 mm | radius: 9 mm | speed: 3   ; speed      ; -        ; no such parameter
            factor  ; n: 1                                                   ; n          ; 1        ; at least 2
            factor  ; n: 1.5                                                 ; n          ; 1.5      ; whole number
            factor  ; n: 5 | confidence: 1                                   ; confidence ; 1        ; above 0, below 1
            factor  ; n: 5 | coverage: 0.4                                   ; coverage   ; 0.4      ; at least 0.5, below 1
            factor  ; n: 5 | coverage: 0,9                                   ; coverage   ; 0,9      ; decimal point
            factor  ; n: 5 | coverage: 9 mm                                  ; coverage   ; 9 mm     ; a share
            factor  ; n: 5 | sides: three                                    ; sides      ; three    ; one of one, two
            samples ; coverage: 99.9999999999 %                              ; coverage   ; 99.9999999999 % ; thousand million
            stack   ; contributor: 2 mm                                      ; contributor ; 2 mm    ; tolerance
            stack   ; contributor: 2 mm sd 0.1 n 5                           ; contributor ; 2 mm sd 0.1 n 5 ; tolerance
            inflate ; row: 6 atm 2.9 mm | pressure: 6 atm                    ; row        ; 6 atm 2.9 mm ; a pressure and a diameter
            inflate ; row: 6 atm = 3 mm | row: 6 atm = 4 mm | pressure: 6 atm ; row       ; -        ; row 1 (6 atm -> 3 mm), row 2
            inflate ; row: 6 atm = 3 mm                                      ; diameter   ; -        ; either a pressure or a diameter
            inflate ; row: 6 atm = 3 mm | pressure: 6 atm | diameter: 3 mm   ; diameter   ; 3 mm     ; either a pressure or a diameter
            inflate ; row: 6 atm = 3 mm | pressure: 6                        ; pressure   ; 6        ; expected a unit
            convert ; from: 3 Fr | to: atm                                   ; to         ; atm      ; not a unit of what is converted
            convert ; from: 3 apples                                         ; from       ; 3 apples ; expected a unit
            burst   ; burst: 20 atm                                          ; burst      ; 20 atm   ; two bursts
            burst   ; burst: 20 atm | burst: 21 atm | n: 3                   ; burst      ; 20 atm   ; not both
            burst   ; n: 3 | mean: 20 atm                                    ; burst      ; -        ; n, mean and sd
            burst   ; n: 3 | sd: 1 atm                                       ; burst      ; -        ; n, mean and sd
            burst   ; mean: 20 atm | sd: 1 atm                               ; burst      ; -        ; n, mean and sd
            interference ; mean: 0.1 mm                                      ; sd         ; -        ; standard deviation
            capstan ; friction: 0.1 | bend: 180                              ; bend       ; 180      ; deg, rad
            capstan ; friction: 0.1 mm | bend: 180 deg                       ; friction   ; 0.1 mm   ; without a unit
            stiffness ; outer: 1 mm | inner: 1 mm | modulus: 193 GPa         ; inner      ; 1 mm     ; below the outer diameter
            stiffness ; outer: 1 mm | modulus: 193 MPa                       ; modulus    ; 193 MPa  ; must be in GPa
            stiffness ; outer: 1 mm | modulus: much                          ; modulus    ; much     ; a number
            buckle  ; outer: 1 mm | modulus: 193 | lumen: 1 mm               ; lumen      ; 1 mm     ; above the outer diameter
            buckle  ; outer: 1 mm | modulus: 193 | lumen: 2 mm | angle: 91 deg ; angle    ; 91 deg   ; at most 90 deg
            pack    ; device: 1 mm | device: 1 mm | device: 1 mm | device: 1 mm | device: 1 mm | device: 1 mm | device: 1 mm | device: 1 mm | device: 1 mm | device: 1 mm | device: 1 mm | device: 1 mm | device: 1 mm | device: 1 mm | device: 1 mm | device: 1 mm | device: 1 mm ; device ; - ; at most 16
            flow    ; lumen: 9 mm | device: 1 mm | device: 1 mm | device: 1 mm | device: 1 mm | device: 1 mm | device: 1 mm | device: 1 mm | device: 1 mm | device: 1 mm ; device ; - ; at most 8
            order   ; option: 2                                              ; option     ; 2        ; a cost and a chance
            order   ; option: -2:0.5                                         ; option     ; -2:0.5   ; -2.0
            order   ; option: 2:0.5:0.6                                      ; option     ; -        ; rises from 0.5
            order   ; option: 2:0.5 | stop: -1                               ; stop       ; -1       ; at least 0
            flow    ; device: 1 mm                                           ; lumen      ; -        ; is missing
            contrast-limit ; weight: 80kg | creatinine: 88mg/dL              ; creatinine ; 88mg/dL  ; 88 mg/dL is no plausible serum creatinine
            contrast-limit ; weight: 80kg | creatinine: 88mg/dL              ; creatinine ; 88mg/dL  ; 88 umol/L would be 0.995 mg/dL
            contrast-limit ; weight: 80 | creatinine: 1.5mg/dL               ; weight     ; 80       ; kg, lb
            contrast-limit ; weight: 8 kg | creatinine: 1.5mg/dL             ; weight     ; 8 kg     ; no plausible body weight
            contrast-limit ; weight: 80 kg | creatinine: 1.5 mg/dL | age: 75 ; sex        ; -        ; go together
            contrast-limit ; weight: 80 kg | creatinine: 1.5 mg/dL | sex: f  ; age        ; -        ; go together
            creatinine-clearance ; weight: 80kg | creatinine: 1.5mg/dL | age: 15 | sex: m ; age ; 15 ; at least 18, at most 110
            creatinine-clearance ; weight: 80kg | creatinine: 1.5mg/dL | age: 75 | sex: x ; sex ; x  ; one of m, f
            contrast-points ; age: 75 | contrast: 100 mL                     ; egfr       ; -        ; either the creatinine
            contrast-points ; age: 75 | contrast: 100 mL | egfr: 50 mL/min | creatinine: 1 mg/dL ; egfr ; 50 mL/min ; either the creatinine
            dose-notice ; kerma: 4200 Gy                                     ; kerma      ; 4200 Gy  ; 4200 mGy would be 4.2 Gy
            dose-notice ; kerma-area: 300 Gy                                 ; kerma-area ; 300 Gy   ; must have a unit (Gy.cm2
            occlusion-score ; bend: 181 deg                                  ; bend       ; 181 deg  ; at most 180 deg
            lesion-class ; length: 9 mm | bend: 0 deg | trait: tubular       ; trait      ; tubular  ; one of eccentric
            dose-notice ; ''                                                 ; kerma      ; -        ; at least one
            """)
    void namesTheParameterAndTheText(String calculator, String arguments, String parameter, String text,
            String problem) {
        ArgumentException refused = assertThrows(ArgumentException.class,
                () -> Given.answer(calculator, arguments));
        assertEquals(parameter, refused.parameter());
        assertEquals(text, refused.text().orElse(null));
        assertTrue(refused.problem().contains(problem), refused::getMessage);
        assertTrue(refused.getMessage().startsWith(parameter) && (text == null || refused.getMessage().contains(text)));
    }
}
