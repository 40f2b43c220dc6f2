/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.quick;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

import org.ferrule.fit.device.Claim;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Phase;
import org.ferrule.quantity.Dimension;

/**
 * The claims of a device about what lies around it, or about what lies in it: thresholds, and the partners that each
 * speaks of, as {@code ClaimReader} hears them. What is said is a sum of bits.
 */
final class QuickClaims {
    static final int YES_IN = 1;
    static final int NO_IN = 2;
    static final int YES_OUT = 4;
    static final int NO_OUT = 8;

    private static final int YES = YES_IN | YES_OUT;
    private static final int NO = NO_IN | NO_OUT;
    private static final long ALL_KINDS = -1;

    private final One[] claims;
    private final long kinds;

    private QuickClaims(One[] claims) {
        this.claims = claims;
        this.kinds = Stream.of(claims).mapToLong(One::kindsOfAny).reduce(0, (a, b) -> a | b);
    }

    /**
     * Claims.
     *
     * @param claims of one device
     * @param comparison the type of claim that compares diameters and counts in the place of that device
     */
    static QuickClaims of(List<Claim> claims, Claim.Type comparison) {
        return new QuickClaims(claims.stream().filter(c -> counts(c, comparison)).map(One::of).toArray(One[]::new));
    }

    private static boolean counts(Claim claim, Claim.Type comparison) {
        return claim.type() == Claim.Type.COMPATIBLE || claim.type() == Claim.Type.NOT_COMPATIBLE
                || claim.type() == comparison && claim.value().filter(Dimension::readable).isPresent();
    }

    /** The bit of a kind of devices. */
    static long bit(DeviceKind kind) {
        return 1L << kind.ordinal();
    }

    /** The kinds of devices of which any may speak. */
    long kinds() {
        return kinds;
    }

    /**
     * The first of them that is a matter of one comparison, whatever the lumen.
     *
     * @param isWire whether the claimant is a wire, so that a claim about wires depends on what of it enters
     * @param wire label of the wire that the claimant runs over, or {@link QuickLabel#NONE}
     */
    Optional<Comparing> comparingOnly(boolean isWire, int wire) {
        for (One claim : claims) {
            if (claim.compares() && claim.devices.isEmpty() && claim.sizes.isEmpty()
                    && !(claim.hasWire && isWire)) {
                int holding = claim.hasWire ? One.holdingFor(wire, claim.wire) : YES | NO;
                long others = Stream.of(claims).filter(c -> c != claim).mapToLong(One::kindsOfAny).reduce(0,
                        (a, b) -> a | b);
                return Optional.of(new Comparing(claim.kinds, claim.value, claim.mayYes & holding,
                        claim.mayNo & holding, others));
            }
        }
        return Optional.empty();
    }

    /**
     * A claim that is a matter of one comparison.
     *
     * @param kinds that it speaks of
     * @param value that it names
     * @param yes what it says where the label is large enough
     * @param no what it says where it is not
     * @param otherKinds the kinds of which other claims of the device may speak
     */
    record Comparing(long kinds, int value, int yes, int no, long otherKinds) {
    }

    /** Whether any may speak of a device of that kind. */
    boolean maySpeakOf(long kind) {
        return (kinds & kind) != 0;
    }

    /**
     * What they say of a partner.
     *
     * @param label what is compared
     * @param wire label of the wire in the question; {@link QuickLabel#NONE} when it is not known
     */
    int say(Partner partner, QuickLabel label, int wire) {
        int said = 0;
        for (One claim : claims) {
            if (claim.speaksOf(partner)) {
                said |= claim.say(label, wire);
            }
        }
        return said;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof QuickClaims that && Arrays.equals(claims, that.claims);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(claims);
    }

    /**
     * What a claim may speak of.
     *
     * @param kind the bit of its kind
     * @param size its size designation
     * @param id of the device; absent where nobody names it, so that devices which differ in nothing else are alike
     */
    record Partner(long kind, String size, Optional<String> id) {
    }

    /**
     * One claim.
     *
     * @param type what it states
     * @param kinds the bits of the kinds that it speaks of
     * @param sizes that it speaks of; empty for all
     * @param devices that it names; empty where it speaks of kinds
     * @param value that is compared
     * @param mayYes what it may say where it says yes
     * @param mayNo what it may say where it says no
     * @param hasWire whether it speaks of a wire
     * @param wire the label of that wire
     */
    private record One(Claim.Type type, long kinds, List<String> sizes, List<String> devices, int value, int mayYes,
            int mayNo, boolean hasWire, int wire) {

        static One of(Claim claim) {
            long kinds = claim.kinds().isEmpty() ? ALL_KINDS
                    : claim.kinds().stream().mapToLong(QuickClaims::bit).reduce(0, (a, b) -> a | b);
            boolean wireUnreadable = claim.wire().filter(w -> !w.readable()).isPresent();
            int mayYes = claim.isScoped() && !wireUnreadable ? bits(claim.covers(), YES_IN, YES_OUT) : 0;
            // coming out after use is no easier than going in; what does not go beside others may go alone
            int mayNo = claim.besideOthers() ? 0 : bits(claim.covers(), NO_IN | NO_OUT, NO_OUT);
            return new One(claim.type(), kinds, claim.sizes(), claim.devices(), number(claim.value()), mayYes, mayNo,
                    claim.wire().filter(Dimension::readable).isPresent(), number(claim.wire()));
        }

        private static int number(Optional<Dimension> printed) {
            return printed.filter(Dimension::readable).map(d -> QuickLabel.number(d.label())).orElse(0);
        }

        private static int bits(Set<Phase> covers, int in, int out) {
            return (covers.contains(Phase.IN) ? in : 0) | (covers.contains(Phase.OUT) ? out : 0);
        }

        boolean compares() {
            return type == Claim.Type.MINIMUM_LUMEN || type == Claim.Type.LARGEST_DEVICE;
        }

        /** The kinds that it may speak of, by kind or by name. */
        long kindsOfAny() {
            return devices.isEmpty() ? kinds : ALL_KINDS;
        }

        boolean speaksOf(Partner partner) {
            if (!devices.isEmpty()) {
                return partner.id().filter(devices::contains).isPresent();
            }
            return (kinds & partner.kind()) != 0 && (sizes.isEmpty() || sizes.contains(partner.size()));
        }

        int say(QuickLabel label, int askedWire) {
            int said = switch (type) {
                case COMPATIBLE -> mayYes;
                case NOT_COMPATIBLE -> mayNo;
                case MINIMUM_LUMEN -> compared(label.extreme() >= value, label);
                case LARGEST_DEVICE -> compared(label.extreme() <= value, label);
            };
            return hasWire ? said & holdingFor(askedWire, wire) : said;
        }

        private int compared(boolean enough, QuickLabel label) {
            if (label.extreme() == QuickLabel.NONE || enough && !label.complete()) {
                return 0;
            }
            return enough ? mayYes : mayNo;
        }

        private static int holdingFor(int asked, int stated) {
            if (asked == QuickLabel.NONE) {
                return NO;
            }
            return (asked <= stated ? YES : 0) | (asked >= stated ? NO : 0);
        }
    }
}
