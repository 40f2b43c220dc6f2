/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.translate;

import java.util.List;
import java.util.Optional;

import org.ferrule.fit.device.BenchResult;
import org.ferrule.model.BenchOutcome;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.quantity.Dimension;

/**
 * Copies the bench results of a library. Results that do not name a pair or an outcome are left to validation; the wire
 * is still the id of a device, which the catalogue replaces by its diameter.
 */
public final class BenchTranslator {
    private BenchTranslator() {
    }

    /** The records of a library's bench results. */
    public static List<BenchResult> translate(DeviceLibrary library) {
        SourceIndex sources = new SourceIndex(library);
        return library.getBench().stream().filter(BenchTranslator::isUsable).map(r -> result(r, sources)).toList();
    }

    private static boolean isUsable(org.ferrule.model.BenchResult result) {
        return result.getOuter() != null && result.getInner() != null && result.isSetResult();
    }

    private static BenchResult result(org.ferrule.model.BenchResult result, SourceIndex sources) {
        int samples = result.getSamples() == null ? 0 : result.getSamples();
        return new BenchResult(result.getOuter(), DeviceTranslator.text(result.getLumen()), result.getInner(),
                Optional.ofNullable(result.getWire()).map(Dimension::lenient),
                result.getResult() == BenchOutcome.PASSED,
                Words.phases(result.getCovers()), samples, sources.of(result));
    }
}
