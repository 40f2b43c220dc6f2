/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import static org.ferrule.fit.sample.SampleDevice.device;
import static org.ferrule.fit.sample.SampleQuestion.passage;

import java.util.Locale;
import java.util.Random;

import org.ferrule.fit.check.BendCheck;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.SampleQuestion;
import org.ferrule.fit.sample.TestRules;
import org.ferrule.fit.verdict.Verdict;

/** Figures in micrometres: two rigid sections that touch, a thin shaft, a bent lumen, and perhaps something in it. */
record RandomBend(int first, int firstLength, int second, int secondLength, int lumen, int radius, int inside,
        int span) {
    static RandomBend any(Random random) {
        int lumen = 1000 + random.nextInt(1200);
        int longest = random.nextInt(3) == 0 ? 2000 : 9000;
        return new RandomBend(500 + random.nextInt(lumen - 500), 500 + random.nextInt(longest),
                500 + random.nextInt(lumen - 500), 500 + random.nextInt(longest), lumen,
                500 + random.nextInt(random.nextBoolean() ? 3000 : 40_000),
                random.nextBoolean() ? 0 : 100 + random.nextInt(500), random.nextInt(60));
    }

    Verdict verdict() {
        return new BendCheck().check(question().question(), Phase.IN).verdict();
    }

    /** The question of a device that comes 10 cm beyond the outer tip. */
    SampleQuestion question() {
        SampleDevice part = device("d", DeviceKind.ROTATIONAL_BURR).length("135 cm")
                .section("first", "0 mm", mm(firstLength), mm(first)).rigid()
                .section("second", mm(firstLength), mm(firstLength + secondLength), mm(second)).rigid()
                .section("shaft", mm(firstLength + secondLength), "135 cm", "0.3 mm");
        SampleQuestion question = passage(part, SampleDevice.guide("g", mm(lumen))).reach("10 cm")
                .bentLumen(mm(radius)).under(TestRules.exact().spans(mm(span), mm(span)));
        SampleQuestion asked = inside == 0 ? question
                : question.beside(SampleDevice.rod("o", DeviceKind.MICROCATHETER, "135 cm", mm(inside)), "5 cm");
        return asked;
    }

    private static String mm(int micrometres) {
        return micrometres / 1000 + "." + String.format(Locale.ROOT, "%03d", micrometres % 1000) + " mm";
    }

    RandomBend thicker(int by) {
        return new RandomBend(first + by, firstLength, second + by, secondLength, lumen, radius, inside, span);
    }

    RandomBend longer(int by) {
        return new RandomBend(first, firstLength + by, second, secondLength, lumen, radius, inside, span);
    }

    RandomBend narrower(int by) {
        return new RandomBend(first, firstLength, second, secondLength, Math.max(1, lumen - by), radius, inside, span);
    }

    RandomBend sharper(int by) {
        return new RandomBend(first, firstLength, second, secondLength, lumen, Math.max(1, radius - by), inside, span);
    }

    RandomBend fuller(int by) {
        return new RandomBend(first, firstLength, second, secondLength, lumen, radius, inside + by, span);
    }

    RandomBend vaguer(int by) {
        return new RandomBend(first, firstLength, second, secondLength, lumen, radius, inside, span + by);
    }
}
