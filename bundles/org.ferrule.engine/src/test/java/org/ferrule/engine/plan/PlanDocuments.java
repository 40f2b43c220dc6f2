/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

import org.ferrule.engine.catalogue.Catalogue;
import org.ferrule.engine.catalogue.LibraryReader;
import org.ferrule.engine.translate.RuleTranslator;
import org.ferrule.fit.rules.RuleSet;
import org.ferrule.io.json.JsonDocuments;
import org.ferrule.model.CaseDocument;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.Document;
import org.ferrule.model.DocumentKind;
import org.ferrule.model.ShelfDocument;
import org.ferrule.model.TechniqueLibrary;
import org.ferrule.quantity.Dimension;
import org.ferrule.samples.GuidesAndBalloons;

/** Small documents for tests, in JSON with single quotes. */
public final class PlanDocuments {
    public static final String DEVICES = """
            'devices':[{'id':'g-6','kind':'guide catheter','effectiveLength':'100 cm',
              'sections':[{'from':'0 mm','to':'100 cm','od':'2.0 mm'}],'lumens':[{'sections':[{'id':'1.78 mm'}]}]},
             {'id':'x-6','kind':'guide extension','effectiveLength':'150 cm','takesWire':'0.014 in',
              'sections':[{'from':'0 mm','to':'25 cm','od':'1.70 mm'},{'from':'25 cm','to':'150 cm','od':'0.5 mm'}],
              'lumens':[{'proximalAt':'25 cm','opens':'collar','sections':[{'id':'1.42 mm'}]}]},
             {'id':'w-14','kind':'guidewire','effectiveLength':'190 cm',
              'sections':[{'from':'0 mm','to':'190 cm','od':'0.014 in'}]},
             {'id':'b-15','kind':'balloon catheter','effectiveLength':'142 cm','takesWire':'0.014 in',
              'sections':[{'from':'0 mm','to':'142 cm','od':'0.9 mm'}],'balloon':{'diameter':'1.5 mm','length':'15 mm'},
              'lumens':[{'use':'wire','proximalAt':'25 cm','opens':'side port','sections':[{'id':'0.016 in'}]}]}]""";
    public static final String TECHNIQUES = """
            'title':'Steps','revision':'3','sources':[{'id':'p','title':'Practice'}],
            'facts':[{'id':'true-lumen','words':'Seen.'}],
            'setups':[{'id':'extension','name':'Extension','hazard':'raised','minutes':6,'source':'p',
              'roles':[{'id':'x','kinds':['guide extension'],'goal':'guide tip'}],
              'leaves':[{'slot':'extension','role':'x','protrusion':'8 cm'}]}],
            'techniques':[{'id':'small','name':'Small balloon','axis':'lower the profile','hazard':'usual','source':'p',
              'roles':[{'id':'b','name':'balloon','kinds':['balloon catheter'],'nominalDiameter':'1.0..1.5 mm'}],
              'needs':[{'fact':'true-lumen'},{'vessel':'2.0 mm min'}],'setups':['extension'],
              'tries':[{'minutes':5,'contrastMl':8,'successes':3,'failures':1,
                'prior':{'successes':1,'failures':1,'label':'assumed'}}]}]""";
    public static final String CASE = """
            'title':'A case','libraries':['a.devices.json'],'rules':'r.rules.json','techniques':'t.techniques.json',
            'day':'2026-04-02','system':{'guide':'g-6','mainWire':'w-14'},
            'path':{'segments':[{'length':'60 mm','diameter':'3.2 mm','bendRadius':'15 mm'},
              {'length':'40 mm','diameter':'2.6 mm','bendRadius':'12 mm'}]},
            'lesion':{'at':'40 mm','length':'12 mm','reference':'3.0 mm'},
            'facts':[{'fact':'true-lumen','holds':true}],
            'aim':{'objective':'contrast','stoppingCost':60,'budgets':{'minutes':90,'contrastMl':200}}""";
    public static final String SHELF = """
            'items':[{'id':'small','device':'b-15','parLevel':2,'price':310.00,'code':'29500000000109',
              'lots':[{'lot':'A','expiry':'2027-02-28','quantity':3,'location':'B'}]},
             {'id':'x','device':'x-6','lots':[{'quantity':1}]},
             {'id':'console','equipment':'laser generator','lots':[{'quantity':1,'serial':'1'}]}]""";

    private static final JsonDocuments JSON = new JsonDocuments();

    private PlanDocuments() {
    }

    public static Document document(DocumentKind kind, String keys) {
        String text = "{'format':'" + kind.format() + "','version':1," + keys + "}";
        return JSON.read(text.replace('\'', '"').getBytes(StandardCharsets.UTF_8), "x" + kind.suffix())
                .document().orElseThrow();
    }

    public static Catalogue catalogue(String... libraries) {
        return Catalogue.of(List.of(libraries).stream().map(keys -> new LibraryReader("a.devices.json",
                (DeviceLibrary) document(DocumentKind.DEVICES, keys))).toList());
    }

    public static TechniqueLibrary techniques(String keys) {
        return (TechniqueLibrary) document(DocumentKind.TECHNIQUES, keys);
    }

    public static CaseDocument file(String keys) {
        return (CaseDocument) document(DocumentKind.CASE, keys);
    }

    public static Optional<ShelfDocument> shelf(String keys) {
        return Optional.of((ShelfDocument) document(DocumentKind.SHELF, keys));
    }

    public static RuleSet rules() {
        org.ferrule.model.RuleSet rules = GuidesAndBalloons.rules();
        rules.setWireAhead(Dimension.parse("30 mm"));
        return RuleTranslator.translate(rules);
    }

    /** What is wrong, as {@code document path feature}. */
    public static List<String> places(List<PlanProblem> problems) {
        return problems.stream().map(p -> (p.document() + " " + p.path() + " " + p.feature()).strip()).toList();
    }
}
