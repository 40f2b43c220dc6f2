/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.flow;

import java.util.Comparator;
import java.util.List;
import org.ferrule.geometry.EnclosingCircle;
import org.ferrule.geometry.Enclosure;
import org.ferrule.geometry.PlacedDisc;
import org.ferrule.quantity.Length;

/**
 * How much flow a lumen still lets through with round devices in it, as share of the empty lumen's flow at equal pressure
 * drop; see the package for what the model leaves out.
 */
public final class LumenFlow {
    /** The largest number of devices. */
    public static final int MOST_DEVICES = 8;

    private static final int TERMS = 32;
    /** Of what a search has found, in both directions; covers the error of {@link #at} and the search's last step. */
    private static final double MARGIN = 0.005;
    /** Of the exact formulas. */
    private static final double ROUNDING = 1e-9;
    /** A device of more than this part of the lumen leaves less than 1e-11 wherever it lies. */
    private static final double FULL = 0.9999;

    private LumenFlow() {
    }

    /**
     * Returns the share for one arrangement. Discs may touch each other and the wall. The share is never below the true
     * one by more than rounding, and above it by less than 0.5 % of it; by less than 0.001 % where the discs'
     * diameters are within a factor of ten. Discs without thickness count for nothing.
     *
     * @param lumen the diameter of the lumen, above zero
     * @param discs up to eight discs, round the centre of the lumen
     * @return from 0, nothing, to 1, as much as in the empty lumen
     * @throws IllegalArgumentException if the lumen has no diameter, there are too many discs, a diameter is negative, or
     *         discs overlap or reach out of the lumen by more than a millionth of its radius; the message names them
     */
    public static double at(Length lumen, List<PlacedDisc> discs) {
        check(lumen, discs.stream().map(PlacedDisc::diameter).toList());
        return share(Arrangement.checked(lumen, discs));
    }

    /**
     * Returns what is left over all positions of the devices. With no device that is 1; with one it reaches from the
     * centre of the lumen to its wall, both {@linkplain Annulus exact}. With several, it is what a search from dozens of
     * arrangements has found, the same each time, widened by 0.5 % of either end. The true extremes may lie further out
     * (with up to five devices longer searches found nothing outside; with more, some ends 1 % further out). Proved is
     * that the upper end is never above what the thickest device alone leaves on the wall. Two or three devices take
     * about a tenth of a second, eight take seconds.
     * <p>
     * Another or a thicker device does not raise the upper end (but for what the search misses, below 0.1 % with up to
     * three). It can raise the lower one: a device that could lie in the centre, where it hinders most, may have to leave
     * it.
     *
     * @param lumen the diameter of the lumen, above zero
     * @param devices diameters of up to eight devices; zero counts for nothing
     * @throws IllegalArgumentException if the lumen has no diameter, there are too many devices, a diameter is negative,
     *         or the devices do not lie in the lumen together; the message names the lengths
     */
    public static OpenFraction interval(Length lumen, List<Length> devices) {
        check(lumen, devices);
        // Sorted, so that the search does not depend on the order.
        List<Length> thick = devices.stream().filter(device -> !device.equals(Length.ZERO))
                .sorted(Comparator.reverseOrder()).toList();
        Enclosure enclosure = EnclosingCircle.discs(thick);
        if (enclosure.upperDiameter().compareTo(lumen) > 0) {
            throw new IllegalArgumentException(thick + " need " + enclosure.upperDiameter() + " and do not lie in "
                    + lumen + " together");
        }
        return switch (thick.size()) {
            case 0 -> new OpenFraction(1, 1, true);
            case 1 -> one(ratio(thick.get(0), lumen));
            default -> several(lumen, enclosure);
        };
    }

    private static OpenFraction one(double ratio) {
        return new OpenFraction(Annulus.concentric(ratio) * (1 - ROUNDING),
                Math.min(1, Annulus.eccentric(ratio, 1) * (1 + ROUNDING)), true);
    }

    private static OpenFraction several(Length lumen, Enclosure enclosure) {
        double thickest = ratio(enclosure.discs().get(0).diameter(), lumen);
        double proved = one(thickest).high();
        if (thickest > FULL) {
            return new OpenFraction(0, proved, false);
        }
        List<List<Circle>> starts = Starts.from(Arrangement.scaled(lumen, enclosure.discs()));
        double low = share(Extreme.least(starts)) * (1 - MARGIN);
        double high = share(Extreme.most(starts)) * (1 + MARGIN);
        return new OpenFraction(low, Math.min(high, proved), false);
    }

    private static double share(List<Circle> discs) {
        if (discs.stream().anyMatch(disc -> disc.radius() > FULL)) {
            return 0;
        }
        return discs.isEmpty() ? 1 : new Multipoles(discs, TERMS).share();
    }

    private static void check(Length lumen, List<Length> diameters) {
        if (lumen.compareTo(Length.ZERO) <= 0) {
            throw new IllegalArgumentException("a lumen of " + lumen);
        }
        if (diameters.size() > MOST_DEVICES) {
            throw new IllegalArgumentException(diameters.size() + " devices, at most " + MOST_DEVICES);
        }
        diameters.stream().filter(Length::isNegative).findFirst().ifPresent(negative -> {
            throw new IllegalArgumentException("negative diameter: " + negative);
        });
    }

    private static double ratio(Length device, Length lumen) {
        return (double) device.thirdNanometres() / lumen.thirdNanometres();
    }
}
