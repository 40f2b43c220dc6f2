/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry;

import static org.ferrule.geometry.Discs.laws;
import static org.ferrule.geometry.Discs.mm;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.quicktheories.generators.SourceDSL.longs;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.ferrule.geometry.RigidInBend.Validity;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.LengthUnit;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.quicktheories.core.Gen;

/** Straight segments in bends, against {@code shared/rigid-in-bend.csv} and against a cylinder sampled in 3-D. */
class RigidInBendTest {
    private static final Gen<Length> LUMENS = longs().between(1_500_000L, 9_000_000L).map(Length::new);
    private static final Gen<Long> PERCENT = longs().between(2, 99);
    /** Radius in tenths of the lumen, from the least that is valid. */
    private static final Gen<Long> TENTHS = longs().between(10, 400);

    @TestFactory
    Stream<DynamicTest> agreesWithTable() throws IOException {
        return SharedTable.rows("rigid-in-bend.csv").stream()
                .map(row -> DynamicTest.dynamicTest(row.get("id"), () -> check(row)));
    }

    private static void check(CSVRecord row) {
        Length device = mm(row.get("deviceMm"));
        Length actual = switch (row.get("asked")) {
            case "longest" -> RigidInBend.longest(mm(row.get("lumenMm")), device, mm(row.get("radiusMm")));
            case "lumen" -> RigidInBend.lumenNeeded(device, mm(row.get("lengthMm")), mm(row.get("radiusMm")));
            default -> RigidInBend.leastRadius(mm(row.get("lumenMm")), device, mm(row.get("lengthMm"))).orElseThrow();
        };
        BigDecimal expected = new BigDecimal(row.get("expectedMm"));
        assertEquals(expected, actual.in(LengthUnit.MILLIMETRE, expected.scale(), RoundingMode.HALF_EVEN));
    }

    /** The closed form is the longest cylinder of a search that knows only which points lie in a torus. */
    @Test
    void agreesWithCylinderSampledInTorus() {
        laws().withExamples(3000).forAll(LUMENS, PERCENT, TENTHS).check((lumen, percent, tenths) -> {
            Length device = lumen.times(percent).dividedBy(100);
            Length radius = lumen.times(tenths).dividedBy(10);
            double expected = new CylinderInTorus(lumen.mm(), radius.mm(), device.mm()).longestMm();
            return Math.abs(RigidInBend.longest(lumen, device, radius).mm() - expected) < 1e-6 * radius.mm();
        });
    }

    /** No other place of the cylinder, shifted, turned or tilted as it may be, lets a longer one in; many take a shorter one. */
    @Test
    void noOtherPlaceTakesLongerCylinder() {
        laws().withExamples(3000).forAll(LUMENS, PERCENT, TENTHS, longs().all()).check(
                (lumen, percent, tenths, seed) -> {
                    Length device = lumen.times(percent).dividedBy(100);
                    Length radius = lumen.times(tenths).dividedBy(10);
                    double longest = RigidInBend.longest(lumen, device, radius).mm();
                    CylinderInTorus torus = new CylinderInTorus(lumen.mm(), radius.mm(), device.mm());
                    return !torus.holdsAnywhere(longest * (1 + 1e-6) + 1e-9, seed)
                            && torus.holdsAnywhere(longest * 0.9, seed);
                });
    }

    @Test
    void everyResultIsOnTheCarefulSideOfTheOthers() {
        laws().forAll(LUMENS, PERCENT, TENTHS).check((lumen, percent, tenths) -> {
            Length device = lumen.times(percent).dividedBy(100);
            Length radius = lumen.times(tenths).dividedBy(10);
            Length longest = RigidInBend.longest(lumen, device, radius);
            Length longer = longest.plus(new Length(1));
            return RigidInBend.lumenNeeded(device, longest, radius).compareTo(lumen) <= 0
                    && RigidInBend.lumenNeeded(device, longer, radius).compareTo(lumen) > 0
                    && RigidInBend.leastRadius(lumen, device, longest).orElseThrow().compareTo(radius) <= 0
                    && (radius.equals(lumen) || RigidInBend.leastRadius(lumen, device, longer).orElseThrow()
                            .compareTo(radius) > 0);
        });
    }

    @Test
    void deviceAsThickAsTheLumenPassesNoBend() {
        assertEquals(Length.ZERO, RigidInBend.longest(mm("1.2"), mm("1.2"), mm("20")));
        assertEquals(Length.ZERO, RigidInBend.longest(mm("1.2"), mm("1.3"), mm("20")));
        assertEquals(Optional.empty(), RigidInBend.leastRadius(mm("1.2"), mm("1.2"), mm("1")));
    }

    @Test
    void leastRadiusIsNeverBelowTheLumen() {
        assertEquals(Optional.of(mm("2")), RigidInBend.leastRadius(mm("2"), mm("0.5"), mm("1")));
    }

    @ParameterizedTest
    @CsvSource({ "2, 20, , 10, HOLDS", "2, 2, , 10, HOLDS", "2, 1.99, , 1, TOO_TIGHT", "2, 20, 10, 10, HOLDS",
        "2, 20, 9.9, 10, CAREFUL", "2, 1, 1, 10, TOO_TIGHT" })
    void tellsWhatAResultIsWorth(String lumen, String radius, String bend, String segment, Validity expected) {
        assertEquals(expected, RigidInBend.validity(mm(lumen), mm(radius), Optional.ofNullable(bend).map(Discs::mm),
                mm(segment)));
    }

    @Test
    void refusesWhatIsNotABend() {
        assertNames("0.99 mm", () -> RigidInBend.longest(mm("2"), mm("1"), mm("0.99")));
        assertNames("0 mm", () -> RigidInBend.longest(mm("0"), mm("0"), mm("1")));
        assertNames("-1 mm", () -> RigidInBend.longest(mm("2"), mm("-1"), mm("9")));
        assertNames("0 mm", () -> RigidInBend.lumenNeeded(mm("1"), mm("1"), mm("0")));
        assertNames("-3 mm", () -> RigidInBend.lumenNeeded(mm("1"), mm("-3"), mm("9")));
        assertNames("-1 mm", () -> RigidInBend.lumenNeeded(mm("-1"), mm("3"), mm("9")));
        assertNames("-3 mm", () -> RigidInBend.leastRadius(mm("2"), mm("1"), mm("-3")));
        assertNames("-2 mm", () -> RigidInBend.leastRadius(mm("-2"), mm("1"), mm("3")));
        assertNames("-1 mm", () -> RigidInBend.leastRadius(mm("2"), mm("-1"), mm("3")));
    }

    private static void assertNames(String figure, Runnable refused) {
        Exception exception = assertThrows(IllegalArgumentException.class, refused::run);
        assertTrue(exception.getMessage().contains(figure), exception::getMessage);
    }
}
