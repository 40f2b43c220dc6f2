/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import java.util.Random;
import java.util.function.UnaryOperator;

import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Lumen;
import org.ferrule.fit.sample.SampleDevice;
import org.ferrule.fit.sample.SampleQuestion;
import org.ferrule.quantity.LengthUnit;

/**
 * An extension in a guide.
 *
 * @param tube its length in steps
 * @param bore inner diameter of the tube
 * @param rod diameter of the push rod
 * @param protrusion in steps
 */
record RandomExtension(int tube, RandomFigure bore, RandomFigure rod, int protrusion) {

    /** A tube no wider than the lumen around it, whose collar lies in it. */
    static RandomExtension in(RandomPassage passage, Random random) {
        int tube = 1 + random.nextInt(passage.boreLength());
        RandomFigure around = passage.bore().get(0).start();
        RandomFigure bore = RandomFigure.near(around.printed() * (int) RandomFigure.GRAIN / 3000
                - random.nextInt(200), RandomFigure.anyForm(random), random);
        return new RandomExtension(tube, bore, RandomFigure.near(50 + random.nextInt(300),
                RandomFigure.anyForm(random), random), random.nextInt(tube));
    }

    RandomExtension withBore(UnaryOperator<RandomFigure> change) {
        return new RandomExtension(tube, change.apply(bore), rod, protrusion);
    }

    RandomExtension withRod(UnaryOperator<RandomFigure> change) {
        return new RandomExtension(tube, bore, change.apply(rod), protrusion);
    }

    SampleDevice device(LengthUnit unit) {
        String end = RandomPassage.station(tube, unit);
        String whole = RandomPassage.station(200, unit);
        return SampleDevice.device("extension", DeviceKind.GUIDE_EXTENSION).length(whole)
                .section("tube", "0 mm", end, bore.plus(300).text(unit)).section("rod", end, whole, rod.text(unit))
                .lumen("tube", Lumen.Use.WORKING, Lumen.Opening.COLLAR, "0 mm", end)
                .bore("0 mm", end, bore.text(unit));
    }

    /** The question of that passage through it. */
    SampleQuestion question(RandomShared shared, LengthUnit unit) {
        return shared.question(unit).through(device(unit), RandomPassage.station(protrusion, unit));
    }
}
