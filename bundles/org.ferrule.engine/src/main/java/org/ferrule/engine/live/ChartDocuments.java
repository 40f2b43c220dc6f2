/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.live;

import java.util.Optional;

import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.RuleSet;

/** Finds the documents that a chart refers to, by the relative paths that it gives. */
public interface ChartDocuments {

    /** The library at that path; absent when there is none, or it is broken. */
    Optional<DeviceLibrary> library(String path);

    /** The rule set at that path; absent when there is none, or it is broken. */
    Optional<RuleSet> rules(String path);
}
