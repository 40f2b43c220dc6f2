/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.closed;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.escalation.technique.Resource;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.Costed;

/**
 * What a closed case used of one resource, exactly as it was written down.
 *
 * @param before used before the log began
 * @param logged used by what was logged
 * @param limit the budget, if one was set
 */
public record ResourceTotal(Resource resource, BigDecimal before, BigDecimal logged, Optional<BigDecimal> limit) {
    public ResourceTotal {
        Objects.requireNonNull(resource, "resource");
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(logged, "logged");
        Objects.requireNonNull(limit, "limit");
    }

    /** All that was used. */
    public BigDecimal total() {
        return before.add(logged);
    }

    /** Whether more was used than the budget allowed. */
    public boolean exceeded() {
        return limit.filter(most -> total().compareTo(most) > 0).isPresent();
    }

    static List<ResourceTotal> of(CaseDocument file, List<LoggedTry> log) {
        Map<Resource, BigDecimal> before = amounts(file.getSpent());
        Map<Resource, BigDecimal> limits = amounts(file.getAim() == null ? null : file.getAim().getBudgets());
        return Stream.of(Resource.values())
                .map(resource -> new ResourceTotal(resource, before.getOrDefault(resource, BigDecimal.ZERO),
                        log.stream().map(entry -> entry.used().getOrDefault(resource, BigDecimal.ZERO))
                                .reduce(BigDecimal.ZERO, BigDecimal::add),
                        Optional.ofNullable(limits.get(resource))))
                .toList();
    }

    /** What is stated, resource by resource. */
    static Map<Resource, BigDecimal> amounts(Costed costs) {
        Map<Resource, BigDecimal> amounts = new EnumMap<>(Resource.class);
        if (costs != null) {
            put(amounts, Resource.TIME, costs.getMinutes());
            put(amounts, Resource.CONTRAST, costs.getContrastMl());
            put(amounts, Resource.DOSE, costs.getDoseMgy());
            put(amounts, Resource.MONEY, costs.getMoney());
        }
        return amounts;
    }

    private static void put(Map<Resource, BigDecimal> amounts, Resource resource, BigDecimal amount) {
        if (amount != null) {
            amounts.put(resource, amount);
        }
    }
}
