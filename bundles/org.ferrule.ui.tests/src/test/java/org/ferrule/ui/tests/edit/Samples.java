/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.edit;

/** Small documents for tests. */
final class Samples {

    /** The name of a rule set's file. */
    static final String RULES_FILE = "sample.rules.json";

    /** A rule set in canonical form; the required clearance stands in line 13. */
    static final String RULES = """
            {
              "format": "ferrule.rules",
              "version": 1,
              "title": "Sample rules",
              "spans": [
                {
                  "figure": "inner diameter",
                  "below": "0.01 mm",
                  "above": "0.01 mm"
                }
              ],
              "clearances": [
                {
                  "required": "0.05 mm"
                }
              ]
            }
            """;

    /** The path of the clearance rule. */
    static final String RULE = "clearances[0]";

    /** The label of its dimension. */
    static final String REQUIRED = "Required clearance";

    private Samples() {
    }
}
