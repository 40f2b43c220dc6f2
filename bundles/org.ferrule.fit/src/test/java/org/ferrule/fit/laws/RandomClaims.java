/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.laws;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

import org.ferrule.fit.device.BenchResult;
import org.ferrule.fit.device.Claim;
import org.ferrule.fit.device.DeviceKind;
import org.ferrule.fit.device.Phase;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.quantity.Dimension;

/** Random claims and bench results about the devices "g0", "b1" and so on. */
final class RandomClaims {
    private static final List<Set<DeviceKind>> KINDS = List.of(Set.of(), Set.of(DeviceKind.GUIDE_CATHETER),
            Set.of(DeviceKind.GUIDE_CATHETER, DeviceKind.GUIDE_EXTENSION), Set.of(DeviceKind.GUIDEWIRE),
            Set.of(DeviceKind.BALLOON_CATHETER, DeviceKind.GUIDEWIRE, DeviceKind.MICROCATHETER));
    private static final List<Set<Phase>> COVERS = List.of(Set.of(), Set.of(Phase.IN), Set.of(Phase.OUT),
            Set.of(Phase.IN, Phase.OUT));

    private final Random random;

    RandomClaims(Random random) {
        this.random = random;
    }

    /** Often none, at most two. */
    List<Claim> claims() {
        List<Claim> claims = new ArrayList<>();
        for (int i = Math.max(0, random.nextInt(4) - 1); i > 0; i--) {
            claims.add(claim());
        }
        return claims;
    }

    private Claim claim() {
        return new Claim(pick(List.of(Claim.Type.values())),
                Optional.of(Dimension.lenient(oneIn(20) ? "as usual" : diameter(random.nextInt(18)))), pick(KINDS),
                oneIn(4) ? List.of("6 Fr", "8 Fr") : List.of(),
                oneIn(5) ? List.of("g" + random.nextInt(9), "b" + random.nextInt(9)) : List.of(), wire(), oneIn(6),
                pick(COVERS), SourceRef.NONE);
    }

    private Optional<Dimension> wire() {
        return oneIn(4) ? Optional.of(Dimension.lenient(oneIn(6) ? "any" : diameter(random.nextInt(5))))
                : Optional.empty();
    }

    private static String diameter(int steps) {
        return "0." + (25 + 5 * steps) + " mm";
    }

    /** Some results about some pairs. */
    List<BenchResult> bench() {
        List<BenchResult> results = new ArrayList<>();
        for (int i = random.nextInt(6); i > 0; i--) {
            results.add(new BenchResult("g" + random.nextInt(9), oneIn(2) ? "" : "lumen", "b" + random.nextInt(9),
                    wire(), random.nextBoolean(), pick(COVERS), random.nextInt(3), SourceRef.NONE));
        }
        return results;
    }

    private boolean oneIn(int number) {
        return random.nextInt(number) == 0;
    }

    private <T> T pick(List<T> all) {
        return all.get(random.nextInt(all.size()));
    }
}
