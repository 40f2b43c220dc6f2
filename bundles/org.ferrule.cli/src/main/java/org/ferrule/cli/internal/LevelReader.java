/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.cli.internal;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.chart.LumenReference;
import org.ferrule.fit.passage.Direction;
import org.ferrule.fit.passage.ReadDevice;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.fit.stack.Level;
import org.ferrule.fit.stack.Placed;
import org.ferrule.quantity.Length;
import org.ferrule.quantity.Offset;

/**
 * Reads the levels of a stack: devices side by side with {@code and} between them, in the order in which they went in;
 * the last one holds the next level.
 */
public final class LevelReader {
    private static final String AND = "\\s+and\\s+";
    private final Catalogue catalogue;
    private final RuleSet rules;

    public LevelReader(Catalogue catalogue, RuleSet rules) {
        this.catalogue = catalogue;
        this.rules = rules;
    }

    /** The level that a text names. */
    public Level read(String text) {
        List<Placed> devices = Stream.of(text.strip().split(AND)).map(this::placed).toList();
        int last = devices.size() - 1;
        return parts(text).read(text, all -> new Level(devices.subList(0, last), devices.get(last)));
    }

    private static OptionParts parts(String text) {
        return new OptionParts("LEVEL", text);
    }

    private Placed placed(String text) {
        OptionParts parts = parts(text);
        Optional<String> wire = parts.take("wire");
        Length ahead = parts.take("ahead").map(t -> parts.read(t, Offset::parse).value()).orElse(Length.ZERO);
        boolean used = parts.takeWord("used");
        parts.requireNothingLeft("wire=ID, ahead=LENGTH, used");
        return parts.read(parts.first(), reference -> {
            LumenReference lumen = LumenReference.parse(reference);
            ReadDevice device = ConditionOptions.device(catalogue, rules, lumen.device(), wire);
            return new Placed(device, ahead, used,
                    lumen.lumen().map(name -> lumen.lumen(device.device(), Direction.TIP_FIRST).name()));
        });
    }
}
