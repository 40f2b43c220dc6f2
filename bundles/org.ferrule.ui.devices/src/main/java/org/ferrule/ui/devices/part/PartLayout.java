/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.part;

import java.util.List;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EReference;
import org.ferrule.model.ModelPackage.Literals;

/**
 * How the parts that a feature holds are laid out.
 *
 * @param feature the feature
 * @param columns the columns of their list; none for a feature that holds one part at most
 * @param children the parts of the parts
 */
public record PartLayout(EReference feature, List<EAttribute> columns, List<PartLayout> children) {

    private static final PartLayout OVAL = new PartLayout(Literals.SHAFT_SECTION__OVAL, List.of(), List.of());
    private static final PartLayout DISCS = new PartLayout(Literals.SHAFT_SECTION__DISCS,
            List.of(Literals.DISC__X, Literals.DISC__Y, Literals.DISC__DIAMETER), List.of());
    private static final PartLayout LUMEN_SECTIONS = new PartLayout(Literals.LUMEN__SECTIONS,
            List.of(Literals.LUMEN_SECTION__NAME, Literals.LUMEN_SECTION__FROM, Literals.LUMEN_SECTION__TO,
                    Literals.LUMEN_SECTION__ID, Literals.LUMEN_SECTION__ID_DISTAL),
            List.of());
    private static final PartLayout COMPLIANCE = new PartLayout(Literals.BALLOON__COMPLIANCE,
            List.of(Literals.COMPLIANCE_ROW__PRESSURE, Literals.COMPLIANCE_ROW__DIAMETER), List.of());

    /** The sections of a shaft. */
    public static final PartLayout SECTIONS = new PartLayout(Literals.DEVICE_PARTS__SECTIONS,
            List.of(Literals.SHAFT_SECTION__NAME, Literals.SHAFT_SECTION__FROM, Literals.SHAFT_SECTION__TO,
                    Literals.SHAFT_SECTION__OD, Literals.SHAFT_SECTION__OD_PROXIMAL, Literals.SHAFT_SECTION__OD_AFTER),
            List.of(OVAL, DISCS));
    /** The lumens. */
    public static final PartLayout LUMENS = new PartLayout(Literals.DEVICE_PARTS__LUMENS, List.of(Literals.LUMEN__NAME,
            Literals.LUMEN__USE, Literals.LUMEN__DISTAL_AT, Literals.LUMEN__PROXIMAL_AT, Literals.LUMEN__OPENS),
            List.of(LUMEN_SECTIONS));
    /** The markers. */
    public static final PartLayout MARKERS = new PartLayout(Literals.DEVICE_PARTS__MARKERS,
            List.of(Literals.MARKER__AT, Literals.MARKER__WIDTH, Literals.SOURCED__NOTE), List.of());
    /** The claims of the maker. */
    public static final PartLayout CLAIMS = new PartLayout(Literals.DEVICE_PARTS__CLAIMS, List.of(Literals.CLAIM__TYPE,
            Literals.CLAIM__VALUE, Literals.CLAIM__KINDS, Literals.CLAIM__SIZES, Literals.CLAIM__WIRE,
            Literals.SOURCED__SOURCE), List.of());
    /** What a device works with, beside shaft and lumens. */
    public static final List<PartLayout> WORKING_PARTS = List.of(
            new PartLayout(Literals.DEVICE_PARTS__BALLOON, List.of(), List.of(COMPLIANCE)),
            new PartLayout(Literals.DEVICE_PARTS__STENT, List.of(), List.of()),
            new PartLayout(Literals.DEVICE_PARTS__CUTTER, List.of(), List.of()),
            new PartLayout(Literals.DEVICE_PARTS__TRANSDUCER, List.of(), List.of()),
            new PartLayout(Literals.DEVICE_PARTS__WIRE, List.of(), List.of()));
    /** The bench results of a library. */
    public static final PartLayout BENCH = new PartLayout(Literals.DEVICE_LIBRARY__BENCH,
            List.of(Literals.BENCH_RESULT__OUTER, Literals.BENCH_RESULT__INNER, Literals.BENCH_RESULT__WIRE,
                    Literals.BENCH_RESULT__RESULT, Literals.BENCH_RESULT__COVERS, Literals.BENCH_RESULT__SAMPLES,
                    Literals.SOURCED__SOURCE),
            List.of());
    /** The sources of a document. */
    public static final PartLayout SOURCES = new PartLayout(Literals.DOCUMENT__SOURCES, List.of(Literals.SOURCE__ID,
            Literals.SOURCE__TITLE, Literals.SOURCE__KIND, Literals.SOURCE__REVISION, Literals.SOURCE__DATE),
            List.of());

    /** Copies the lists. */
    public PartLayout {
        columns = List.copyOf(columns);
        children = List.copyOf(children);
    }
}
