/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.util.List;
import java.util.Objects;

/**
 * On what the verdicts of a chart rest.
 *
 * @param rules the rule set
 * @param libraries the device libraries
 * @param conditions in words, one condition each: direction, wire, reach; may be empty
 */
public record Basis(Edition rules, List<Edition> libraries, List<String> conditions) {

    public Basis {
        Objects.requireNonNull(rules, "rules");
        libraries = List.copyOf(libraries);
        conditions = List.copyOf(conditions);
    }
}
