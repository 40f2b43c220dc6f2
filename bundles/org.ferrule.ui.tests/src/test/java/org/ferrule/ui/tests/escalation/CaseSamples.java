/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.escalation;

/** Techniques, a shelf and a case over the libraries of the demo; all figures are invented for the tests. */
final class CaseSamples {

    /** The name of the case's file. */
    static final String CASE_FILE = "crossing.case.json";
    /** The name of the shelf's file. */
    static final String SHELF_FILE = "cabinet.shelf.json";
    /** The name of the technique library's file. */
    static final String TECHNIQUES_FILE = "crossing.techniques.json";

    /** Two balloons, one of them through an extension, a burr, a laser. */
    static final String TECHNIQUES = """
            {
              "format": "ferrule.techniques",
              "version": 1,
              "title": "Balloon does not cross",
              "sources": [{"id": "practice", "title": "Common practice", "kind": "common practice"}],
              "situation": "A balloon does not cross the lesion.",
              "facts": [
                {
                  "id": "true-lumen",
                  "words": "The wire is seen in the distal true lumen in two orthogonal views."
                },
                {"id": "no-ostial-disease", "words": "The ostium is free of disease."},
                {"id": "calcium", "words": "The plaque is calcified."}
              ],
              "setups": [
                {
                  "id": "extension",
                  "name": "Guide extension in place",
                  "hazard": "raised",
                  "roles": [
                    {
                      "id": "extension",
                      "name": "guide extension",
                      "kinds": ["guide extension"],
                      "goal": "guide tip"
                    }
                  ],
                  "needs": [{"fact": "no-ostial-disease"}],
                  "leaves": [{"slot": "extension", "role": "extension", "protrusion": "2 cm"}],
                  "minutes": 4,
                  "contrastMl": 5,
                  "doseMgy": 60,
                  "cautions": ["It can damp the pressure and injure the ostium."],
                  "stop": "The pressure stays damped.",
                  "source": "practice"
                }
              ],
              "techniques": [
                {
                  "id": "small-balloon",
                  "name": "Small balloon",
                  "axis": "lower the profile",
                  "hazard": "usual",
                  "roles": [
                    {
                      "id": "balloon",
                      "name": "small balloon",
                      "kinds": ["balloon catheter"],
                      "nominalDiameter": "1.0..1.5 mm",
                      "nominalLength": "10..30 mm"
                    }
                  ],
                  "needs": [{"fact": "true-lumen"}, {"vessel": "2.0 mm min"}],
                  "tries": [
                    {
                      "minutes": 5,
                      "contrastMl": 8,
                      "doseMgy": 50,
                      "prior": {"successes": 1, "failures": 2, "label": "Assumed for a test, not measured"}
                    },
                    {
                      "minutes": 5,
                      "contrastMl": 8,
                      "doseMgy": 50,
                      "prior": {"successes": 1, "failures": 2, "label": "Assumed for a test, not measured"}
                    }
                  ],
                  "cautions": ["Burst in a fixed place can tear the vessel."],
                  "stop": "It does not move after two firm pushes.",
                  "source": "practice"
                },
                {
                  "id": "deep-balloon",
                  "name": "Small balloon through the extension",
                  "axis": "add support",
                  "hazard": "usual",
                  "roles": [
                    {
                      "id": "balloon",
                      "name": "small balloon",
                      "kinds": ["balloon catheter"],
                      "nominalDiameter": "1.0..1.5 mm",
                      "nominalLength": "10..30 mm"
                    }
                  ],
                  "needs": [{"fact": "true-lumen"}],
                  "setups": ["extension"],
                  "tries": [
                    {
                      "minutes": 6,
                      "contrastMl": 10,
                      "doseMgy": 80,
                      "prior": {"successes": 3, "failures": 1, "label": "Assumed for a test, not measured"}
                    }
                  ],
                  "stop": "The guide backs out.",
                  "source": "practice"
                },
                {
                  "id": "burr",
                  "name": "Rotational burr",
                  "axis": "modify the lesion",
                  "hazard": "high",
                  "roles": [
                    {
                      "id": "burr",
                      "name": "burr",
                      "kinds": ["rotational burr"],
                      "nominalDiameter": "1.25 mm",
                      "carrier": "main wire"
                    },
                    {
                      "id": "console",
                      "name": "console for burrs",
                      "equipment": "rotational console",
                      "task": "stand by",
                      "carrier": "none",
                      "goal": "in guide"
                    }
                  ],
                  "needs": [{"fact": "true-lumen"}, {"fact": "calcium"}],
                  "tries": [
                    {
                      "minutes": 20,
                      "contrastMl": 25,
                      "doseMgy": 300,
                      "prior": {"successes": 3, "failures": 1, "label": "Assumed for a test, not measured"}
                    }
                  ],
                  "cautions": ["Slow flow, perforation and a trapped burr need to be expected."],
                  "offLabel": "A bend sharper than the label allows",
                  "stop": "The speed falls.",
                  "source": "practice"
                },
                {
                  "id": "laser",
                  "name": "Laser",
                  "axis": "modify the lesion",
                  "hazard": "raised",
                  "roles": [
                    {
                      "id": "laser",
                      "name": "laser catheter",
                      "kinds": ["laser catheter"],
                      "nominalDiameter": "0.8..1.0 mm"
                    },
                    {
                      "id": "console",
                      "name": "laser generator",
                      "equipment": "laser generator",
                      "task": "stand by",
                      "carrier": "none",
                      "goal": "in guide"
                    }
                  ],
                  "needs": [{"fact": "true-lumen"}],
                  "tries": [
                    {
                      "minutes": 15,
                      "contrastMl": 20,
                      "doseMgy": 200,
                      "prior": {"successes": 1, "failures": 2, "label": "Assumed for a test, not measured"}
                    }
                  ],
                  "source": "practice"
                },
                {
                  "id": "leave",
                  "name": "Stop and come back another day",
                  "axis": "leave the plaque",
                  "hazard": "usual",
                  "tries": [],
                  "changes": ["The vessel is left as it is."],
                  "source": "practice"
                }
              ],
              "bailOut": [
                {
                  "id": "covered-stent",
                  "name": "covered stent",
                  "kinds": ["covered stent system"],
                  "toVesselFrom": 0.9,
                  "toVesselTo": 1.2,
                  "source": "practice"
                },
                {"id": "coil", "name": "coil", "kinds": ["coil"], "task": "stand by", "source": "practice"}
              ],
              "stopRules": [
                {
                  "id": "dose",
                  "words": "Weigh the rest against the dose.",
                  "resource": "dose",
                  "limit": 5000,
                  "source": "practice"
                },
                {
                  "id": "pressure",
                  "words": "The pressure falls and does not recover.",
                  "source": "practice"
                }
              ]
            }
            """;

    /** A case in which the ostium is free and nobody says whether the plaque is calcified. */
    static final String CASE = """
            {
              "format": "ferrule.case",
              "version": 1,
              "title": "Calcified mid segment",
              "libraries": [
                "access-and-guides.devices.json",
                "balloons.devices.json",
                "extensions-and-microcatheters.devices.json",
                "wires.devices.json",
                "stents-and-atherectomy.devices.json",
                "imaging-and-bailout.devices.json"
              ],
              "rules": "house.rules.json",
              "techniques": "crossing.techniques.json",
              "shelf": "cabinet.shelf.json",
              "day": "2026-04-02",
              "system": {
                "sheath": "brn-sheath-7fr-11",
                "guide": "brn-guide-7fr-left-100",
                "mainWire": "hes-workhorse-300"
              },
              "path": {
                "name": "example vessel",
                "segments": [
                  {"name": "proximal", "length": "40 mm", "diameter": "3.5 mm"},
                  {"name": "mid", "length": "60 mm", "diameter": "3.0 mm"}
                ]
              },
              "lesion": {
                "name": "calcified stenosis",
                "at": "60 mm",
                "length": "15 mm",
                "diameter": "0.8 mm",
                "reference": "3.0 mm"
              },
              "deliver": "san-stent-300-18",
              "facts": [{"fact": "no-ostial-disease", "holds": true}, {"fact": "true-lumen", "holds": true}],
              "aim": {
                "objective": "time",
                "stoppingCost": 90,
                "tiersFirst": true,
                "budgets": {"minutes": 90, "contrastMl": 200, "doseMgy": 3000}
              },
              "spent": {"minutes": 20, "contrastMl": 60, "doseMgy": 500}
            }
            """;

    /** Balloons, the last extension, an expired burr. */
    static final String SHELF = """
            {
              "format": "ferrule.shelf",
              "version": 1,
              "title": "Cabinet",
              "libraries": [
                "access-and-guides.devices.json",
                "balloons.devices.json",
                "extensions-and-microcatheters.devices.json",
                "wires.devices.json",
                "stents-and-atherectomy.devices.json",
                "imaging-and-bailout.devices.json"
              ],
              "currency": "EUR",
              "items": [
                {
                  "id": "sc-150-15",
                  "name": "Small balloon 1.50 x 15",
                  "device": "dun-sc-150-15",
                  "code": "06291041500213",
                  "parLevel": 2,
                  "price": 310,
                  "lots": [{"lot": "A213", "expiry": "2027-02-28", "quantity": 3, "location": "cabinet 2, shelf B"}]
                },
                {
                  "id": "sc-125-15",
                  "name": "Small balloon 1.25 x 15",
                  "device": "dun-sc-125-15",
                  "parLevel": 2,
                  "price": 310,
                  "lots": [{"lot": "B011", "expiry": "2026-12-31", "quantity": 1, "location": "cabinet 2, shelf B"}]
                },
                {
                  "id": "extension-7",
                  "name": "Guide extension 7 Fr",
                  "device": "pel-extension-7fr",
                  "parLevel": 1,
                  "price": 540,
                  "lots": [{"lot": "E5", "expiry": "2028-05-31", "quantity": 1, "location": "cabinet 1, shelf A"}]
                },
                {
                  "id": "burr-125",
                  "name": "Burr 1.25",
                  "device": "quo-burr-125",
                  "parLevel": 1,
                  "price": 980,
                  "lots": [{"lot": "Q9", "expiry": "2025-01-31", "quantity": 1, "location": "cabinet 3"}]
                },
                {
                  "id": "console",
                  "name": "Console for burrs",
                  "equipment": "rotational console",
                  "lots": [{"quantity": 1, "location": "room 2"}]
                },
                {
                  "id": "covered-300",
                  "name": "Covered stent 3.00 x 16",
                  "device": "yst-covered-300-16",
                  "parLevel": 1,
                  "lots": [{"lot": "C1", "expiry": "2027-06-30", "quantity": 1, "location": "cabinet 4"}]
                }
              ]
            }
            """;

    private CaseSamples() {
    }
}
