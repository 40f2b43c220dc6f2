/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.EReference;

/**
 * <!-- begin-user-doc -->
 * The <b>Package</b> for the model.
 * It contains accessors for the meta objects to represent
 * <ul>
 *   <li>each class,</li>
 *   <li>each feature of each class,</li>
 *   <li>each enum,</li>
 *   <li>and each data type</li>
 * </ul>
 * <!-- end-user-doc -->
 * <!-- begin-model-doc -->
 * The documents of Ferrule: device libraries, rule sets, fit charts, techniques, cases and shelves. Every class is one JSON object, every feature one key of the same name, in the order given here; see docs/formats.md. Figures are dimension texts, kept as they were typed. Stations of a shaft are measured from the distal tip, stations of a lumen section from the lumen's proximal entry.
 * <!-- end-model-doc -->
 * @see org.ferrule.model.ModelFactory
 * @model kind="package"
 * @generated
 */
public interface ModelPackage extends EPackage
{
	/**
	 * The package name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNAME = "model";

	/**
	 * The package namespace URI.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_URI = "https://ferrule.invalid/model/1";

	/**
	 * The package namespace name.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	String eNS_PREFIX = "model";

	/**
	 * The singleton instance of the package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	ModelPackage eINSTANCE = org.ferrule.model.impl.ModelPackageImpl.init();

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.ExtraKeyImpl <em>Extra Key</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.ExtraKeyImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getExtraKey()
	 * @generated
	 */
	int EXTRA_KEY = 0;

	/**
	 * The feature id for the '<em><b>Key</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXTRA_KEY__KEY = 0;

	/**
	 * The feature id for the '<em><b>Json</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXTRA_KEY__JSON = 1;

	/**
	 * The number of structural features of the '<em>Extra Key</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int EXTRA_KEY_FEATURE_COUNT = 2;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.ElementImpl <em>Element</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.ElementImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getElement()
	 * @generated
	 */
	int ELEMENT = 1;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ELEMENT__EXTRAS = 0;

	/**
	 * The number of structural features of the '<em>Element</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ELEMENT_FEATURE_COUNT = 1;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.SourcedImpl <em>Sourced</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.SourcedImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getSourced()
	 * @generated
	 */
	int SOURCED = 2;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOURCED__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOURCED__SOURCE = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOURCED__PAGE = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOURCED__NOTE = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Sourced</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOURCED_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.DocumentImpl <em>Document</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.DocumentImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getDocument()
	 * @generated
	 */
	int DOCUMENT = 3;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Format</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT__FORMAT = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT__VERSION = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT__TITLE = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Revision</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT__REVISION = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT__DATE = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Sources</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT__SOURCES = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Document</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.SourceImpl <em>Source</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.SourceImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getSource()
	 * @generated
	 */
	int SOURCE = 4;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOURCE__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOURCE__ID = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOURCE__TITLE = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOURCE__KIND = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Revision</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOURCE__REVISION = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOURCE__DATE = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Reviewer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOURCE__REVIEWER = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Reviewed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOURCE__REVIEWED = ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Source</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SOURCE_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 7;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.DeviceLibraryImpl <em>Device Library</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.DeviceLibraryImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getDeviceLibrary()
	 * @generated
	 */
	int DEVICE_LIBRARY = 5;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LIBRARY__EXTRAS = DOCUMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Format</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LIBRARY__FORMAT = DOCUMENT__FORMAT;

	/**
	 * The feature id for the '<em><b>Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LIBRARY__VERSION = DOCUMENT__VERSION;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LIBRARY__TITLE = DOCUMENT__TITLE;

	/**
	 * The feature id for the '<em><b>Revision</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LIBRARY__REVISION = DOCUMENT__REVISION;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LIBRARY__DATE = DOCUMENT__DATE;

	/**
	 * The feature id for the '<em><b>Sources</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LIBRARY__SOURCES = DOCUMENT__SOURCES;

	/**
	 * The feature id for the '<em><b>Lines</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LIBRARY__LINES = DOCUMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Devices</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LIBRARY__DEVICES = DOCUMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Bench</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LIBRARY__BENCH = DOCUMENT_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Device Library</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LIBRARY_FEATURE_COUNT = DOCUMENT_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.DevicePartsImpl <em>Device Parts</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.DevicePartsImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getDeviceParts()
	 * @generated
	 */
	int DEVICE_PARTS = 6;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__ID = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__NAME = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__KIND = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Maker</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__MAKER = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Model</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__MODEL = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Size</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__SIZE = SOURCED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Effective Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__EFFECTIVE_LENGTH = SOURCED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Takes Wire</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__TAKES_WIRE = SOURCED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Sections</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__SECTIONS = SOURCED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Lumens</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__LUMENS = SOURCED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Markers</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__MARKERS = SOURCED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Balloon</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__BALLOON = SOURCED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Stent</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__STENT = SOURCED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Cutter</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__CUTTER = SOURCED_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Transducer</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__TRANSDUCER = SOURCED_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Wire</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__WIRE = SOURCED_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Claims</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS__CLAIMS = SOURCED_FEATURE_COUNT + 16;

	/**
	 * The number of structural features of the '<em>Device Parts</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_PARTS_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 17;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.DeviceLineImpl <em>Device Line</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.DeviceLineImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getDeviceLine()
	 * @generated
	 */
	int DEVICE_LINE = 7;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__EXTRAS = DEVICE_PARTS__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__SOURCE = DEVICE_PARTS__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__PAGE = DEVICE_PARTS__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__NOTE = DEVICE_PARTS__NOTE;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__ID = DEVICE_PARTS__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__NAME = DEVICE_PARTS__NAME;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__KIND = DEVICE_PARTS__KIND;

	/**
	 * The feature id for the '<em><b>Maker</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__MAKER = DEVICE_PARTS__MAKER;

	/**
	 * The feature id for the '<em><b>Model</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__MODEL = DEVICE_PARTS__MODEL;

	/**
	 * The feature id for the '<em><b>Size</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__SIZE = DEVICE_PARTS__SIZE;

	/**
	 * The feature id for the '<em><b>Effective Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__EFFECTIVE_LENGTH = DEVICE_PARTS__EFFECTIVE_LENGTH;

	/**
	 * The feature id for the '<em><b>Takes Wire</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__TAKES_WIRE = DEVICE_PARTS__TAKES_WIRE;

	/**
	 * The feature id for the '<em><b>Sections</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__SECTIONS = DEVICE_PARTS__SECTIONS;

	/**
	 * The feature id for the '<em><b>Lumens</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__LUMENS = DEVICE_PARTS__LUMENS;

	/**
	 * The feature id for the '<em><b>Markers</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__MARKERS = DEVICE_PARTS__MARKERS;

	/**
	 * The feature id for the '<em><b>Balloon</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__BALLOON = DEVICE_PARTS__BALLOON;

	/**
	 * The feature id for the '<em><b>Stent</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__STENT = DEVICE_PARTS__STENT;

	/**
	 * The feature id for the '<em><b>Cutter</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__CUTTER = DEVICE_PARTS__CUTTER;

	/**
	 * The feature id for the '<em><b>Transducer</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__TRANSDUCER = DEVICE_PARTS__TRANSDUCER;

	/**
	 * The feature id for the '<em><b>Wire</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__WIRE = DEVICE_PARTS__WIRE;

	/**
	 * The feature id for the '<em><b>Claims</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE__CLAIMS = DEVICE_PARTS__CLAIMS;

	/**
	 * The number of structural features of the '<em>Device Line</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_LINE_FEATURE_COUNT = DEVICE_PARTS_FEATURE_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.DeviceImpl <em>Device</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.DeviceImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getDevice()
	 * @generated
	 */
	int DEVICE = 8;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__EXTRAS = DEVICE_PARTS__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__SOURCE = DEVICE_PARTS__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__PAGE = DEVICE_PARTS__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__NOTE = DEVICE_PARTS__NOTE;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__ID = DEVICE_PARTS__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__NAME = DEVICE_PARTS__NAME;

	/**
	 * The feature id for the '<em><b>Kind</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__KIND = DEVICE_PARTS__KIND;

	/**
	 * The feature id for the '<em><b>Maker</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__MAKER = DEVICE_PARTS__MAKER;

	/**
	 * The feature id for the '<em><b>Model</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__MODEL = DEVICE_PARTS__MODEL;

	/**
	 * The feature id for the '<em><b>Size</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__SIZE = DEVICE_PARTS__SIZE;

	/**
	 * The feature id for the '<em><b>Effective Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__EFFECTIVE_LENGTH = DEVICE_PARTS__EFFECTIVE_LENGTH;

	/**
	 * The feature id for the '<em><b>Takes Wire</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__TAKES_WIRE = DEVICE_PARTS__TAKES_WIRE;

	/**
	 * The feature id for the '<em><b>Sections</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__SECTIONS = DEVICE_PARTS__SECTIONS;

	/**
	 * The feature id for the '<em><b>Lumens</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__LUMENS = DEVICE_PARTS__LUMENS;

	/**
	 * The feature id for the '<em><b>Markers</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__MARKERS = DEVICE_PARTS__MARKERS;

	/**
	 * The feature id for the '<em><b>Balloon</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__BALLOON = DEVICE_PARTS__BALLOON;

	/**
	 * The feature id for the '<em><b>Stent</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__STENT = DEVICE_PARTS__STENT;

	/**
	 * The feature id for the '<em><b>Cutter</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__CUTTER = DEVICE_PARTS__CUTTER;

	/**
	 * The feature id for the '<em><b>Transducer</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__TRANSDUCER = DEVICE_PARTS__TRANSDUCER;

	/**
	 * The feature id for the '<em><b>Wire</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__WIRE = DEVICE_PARTS__WIRE;

	/**
	 * The feature id for the '<em><b>Claims</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__CLAIMS = DEVICE_PARTS__CLAIMS;

	/**
	 * The feature id for the '<em><b>Line</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE__LINE = DEVICE_PARTS_FEATURE_COUNT + 0;

	/**
	 * The number of structural features of the '<em>Device</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DEVICE_FEATURE_COUNT = DEVICE_PARTS_FEATURE_COUNT + 1;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.ShaftSectionImpl <em>Shaft Section</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.ShaftSectionImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getShaftSection()
	 * @generated
	 */
	int SHAFT_SECTION = 9;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION__NAME = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION__FROM = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION__TO = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Od</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION__OD = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Od Proximal</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION__OD_PROXIMAL = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Od After</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION__OD_AFTER = SOURCED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Od After Proximal</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION__OD_AFTER_PROXIMAL = SOURCED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Oval</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION__OVAL = SOURCED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Discs</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION__DISCS = SOURCED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Rigid</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION__RIGID = SOURCED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Stiffness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION__STIFFNESS = SOURCED_FEATURE_COUNT + 10;

	/**
	 * The number of structural features of the '<em>Shaft Section</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHAFT_SECTION_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 11;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.OvalImpl <em>Oval</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.OvalImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getOval()
	 * @generated
	 */
	int OVAL = 10;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OVAL__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OVAL__WIDTH = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Height</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OVAL__HEIGHT = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Oval</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OVAL_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.DiscImpl <em>Disc</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.DiscImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getDisc()
	 * @generated
	 */
	int DISC = 11;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DISC__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>X</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DISC__X = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Y</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DISC__Y = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DISC__DIAMETER = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Disc</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DISC_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.LumenImpl <em>Lumen</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.LumenImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getLumen()
	 * @generated
	 */
	int LUMEN = 12;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN__NAME = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN__USE = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Distal At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN__DISTAL_AT = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Proximal At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN__PROXIMAL_AT = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Opens</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN__OPENS = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Sections</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN__SECTIONS = SOURCED_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Lumen</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 6;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.LumenSectionImpl <em>Lumen Section</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.LumenSectionImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getLumenSection()
	 * @generated
	 */
	int LUMEN_SECTION = 13;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN_SECTION__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN_SECTION__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN_SECTION__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN_SECTION__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN_SECTION__NAME = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN_SECTION__FROM = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN_SECTION__TO = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN_SECTION__ID = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Id Distal</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN_SECTION__ID_DISTAL = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Lumen Section</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LUMEN_SECTION_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 5;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.MarkerImpl <em>Marker</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.MarkerImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getMarker()
	 * @generated
	 */
	int MARKER = 14;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MARKER__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MARKER__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MARKER__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MARKER__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MARKER__AT = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Width</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MARKER__WIDTH = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Marker</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MARKER_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.BalloonImpl <em>Balloon</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.BalloonImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getBalloon()
	 * @generated
	 */
	int BALLOON = 15;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BALLOON__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BALLOON__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BALLOON__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BALLOON__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Section</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BALLOON__SECTION = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BALLOON__DIAMETER = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BALLOON__LENGTH = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Nominal Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BALLOON__NOMINAL_PRESSURE = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Rated Burst Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BALLOON__RATED_BURST_PRESSURE = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Compliance</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BALLOON__COMPLIANCE = SOURCED_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Balloon</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BALLOON_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 6;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.ComplianceRowImpl <em>Compliance Row</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.ComplianceRowImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getComplianceRow()
	 * @generated
	 */
	int COMPLIANCE_ROW = 16;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPLIANCE_ROW__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Pressure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPLIANCE_ROW__PRESSURE = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPLIANCE_ROW__DIAMETER = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Compliance Row</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COMPLIANCE_ROW_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.StentImpl <em>Stent</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.StentImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getStent()
	 * @generated
	 */
	int STENT = 17;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENT__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENT__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENT__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENT__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Section</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENT__SECTION = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENT__DIAMETER = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENT__LENGTH = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Maximum Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENT__MAXIMUM_DIAMETER = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Material</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENT__MATERIAL = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Strut Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENT__STRUT_THICKNESS = SOURCED_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Stent</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STENT_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 6;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.CutterImpl <em>Cutter</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.CutterImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getCutter()
	 * @generated
	 */
	int CUTTER = 18;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUTTER__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUTTER__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUTTER__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUTTER__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Section</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUTTER__SECTION = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Type</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUTTER__TYPE = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUTTER__DIAMETER = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Cutter</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CUTTER_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.TransducerImpl <em>Transducer</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.TransducerImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getTransducer()
	 * @generated
	 */
	int TRANSDUCER = 19;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRANSDUCER__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRANSDUCER__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRANSDUCER__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRANSDUCER__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Type</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRANSDUCER__TYPE = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRANSDUCER__AT = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Transducer</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TRANSDUCER_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.WireTraitsImpl <em>Wire Traits</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.WireTraitsImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getWireTraits()
	 * @generated
	 */
	int WIRE_TRAITS = 20;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WIRE_TRAITS__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WIRE_TRAITS__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WIRE_TRAITS__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WIRE_TRAITS__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Tip Load</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WIRE_TRAITS__TIP_LOAD = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Tip Shape</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WIRE_TRAITS__TIP_SHAPE = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Extendable</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WIRE_TRAITS__EXTENDABLE = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Coating</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WIRE_TRAITS__COATING = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Wire Traits</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int WIRE_TRAITS_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.ClaimImpl <em>Claim</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.ClaimImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getClaim()
	 * @generated
	 */
	int CLAIM = 21;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Type</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__TYPE = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Value</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__VALUE = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Kinds</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__KINDS = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Sizes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__SIZES = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Devices</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__DEVICES = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Wire</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__WIRE = SOURCED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Alone</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__ALONE = SOURCED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Covers</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM__COVERS = SOURCED_FEATURE_COUNT + 7;

	/**
	 * The number of structural features of the '<em>Claim</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLAIM_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 8;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.BenchResultImpl <em>Bench Result</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.BenchResultImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getBenchResult()
	 * @generated
	 */
	int BENCH_RESULT = 22;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_RESULT__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_RESULT__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_RESULT__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_RESULT__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Outer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_RESULT__OUTER = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Lumen</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_RESULT__LUMEN = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Inner</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_RESULT__INNER = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Wire</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_RESULT__WIRE = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Result</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_RESULT__RESULT = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Covers</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_RESULT__COVERS = SOURCED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Samples</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_RESULT__SAMPLES = SOURCED_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Bench Result</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BENCH_RESULT_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 7;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.RuleSetImpl <em>Rule Set</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.RuleSetImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getRuleSet()
	 * @generated
	 */
	int RULE_SET = 23;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__EXTRAS = DOCUMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Format</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__FORMAT = DOCUMENT__FORMAT;

	/**
	 * The feature id for the '<em><b>Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__VERSION = DOCUMENT__VERSION;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__TITLE = DOCUMENT__TITLE;

	/**
	 * The feature id for the '<em><b>Revision</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__REVISION = DOCUMENT__REVISION;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__DATE = DOCUMENT__DATE;

	/**
	 * The feature id for the '<em><b>Sources</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__SOURCES = DOCUMENT__SOURCES;

	/**
	 * The feature id for the '<em><b>Spans</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__SPANS = DOCUMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Clearances</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__CLEARANCES = DOCUMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>After Use</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__AFTER_USE = DOCUMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Flow Limits</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__FLOW_LIMITS = DOCUMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Allowances</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__ALLOWANCES = DOCUMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Ratio Bands</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__RATIO_BANDS = DOCUMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Chance Limits</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__CHANCE_LIMITS = DOCUMENT_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Confidence</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__CONFIDENCE = DOCUMENT_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Coverage</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__COVERAGE = DOCUMENT_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Wire Ahead</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET__WIRE_AHEAD = DOCUMENT_FEATURE_COUNT + 9;

	/**
	 * The number of structural features of the '<em>Rule Set</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RULE_SET_FEATURE_COUNT = DOCUMENT_FEATURE_COUNT + 10;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.SpanImpl <em>Span</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.SpanImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getSpan()
	 * @generated
	 */
	int SPAN = 24;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPAN__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPAN__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPAN__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPAN__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Figure</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPAN__FIGURE = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Kinds</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPAN__KINDS = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Below</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPAN__BELOW = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Above</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPAN__ABOVE = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Runs Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPAN__RUNS_LOW = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Span</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SPAN_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 5;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.ClearanceRuleImpl <em>Clearance Rule</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.ClearanceRuleImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getClearanceRule()
	 * @generated
	 */
	int CLEARANCE_RULE = 25;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLEARANCE_RULE__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLEARANCE_RULE__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLEARANCE_RULE__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLEARANCE_RULE__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Outer</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLEARANCE_RULE__OUTER = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Inner</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLEARANCE_RULE__INNER = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Required</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLEARANCE_RULE__REQUIRED = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Clearance Rule</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLEARANCE_RULE_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.AfterUseRuleImpl <em>After Use Rule</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.AfterUseRuleImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getAfterUseRule()
	 * @generated
	 */
	int AFTER_USE_RULE = 26;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AFTER_USE_RULE__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AFTER_USE_RULE__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AFTER_USE_RULE__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AFTER_USE_RULE__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Kinds</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AFTER_USE_RULE__KINDS = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Growth Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AFTER_USE_RULE__GROWTH_LOW = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Growth Centre</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AFTER_USE_RULE__GROWTH_CENTRE = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Growth High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AFTER_USE_RULE__GROWTH_HIGH = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>After Use Rule</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AFTER_USE_RULE_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.FlowLimitImpl <em>Flow Limit</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.FlowLimitImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getFlowLimit()
	 * @generated
	 */
	int FLOW_LIMIT = 27;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOW_LIMIT__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOW_LIMIT__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOW_LIMIT__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOW_LIMIT__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOW_LIMIT__USE = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Least</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOW_LIMIT__LEAST = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Flow Limit</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FLOW_LIMIT_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.AllowanceImpl <em>Allowance</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.AllowanceImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getAllowance()
	 * @generated
	 */
	int ALLOWANCE = 28;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALLOWANCE__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALLOWANCE__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALLOWANCE__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALLOWANCE__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Purpose</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALLOWANCE__PURPOSE = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALLOWANCE__LENGTH = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Allowance</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ALLOWANCE_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.RatioBandImpl <em>Ratio Band</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.RatioBandImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getRatioBand()
	 * @generated
	 */
	int RATIO_BAND = 29;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIO_BAND__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIO_BAND__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIO_BAND__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIO_BAND__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Use</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIO_BAND__USE = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Low</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIO_BAND__LOW = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>High</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIO_BAND__HIGH = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Meaning</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIO_BAND__MEANING = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Ratio Band</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int RATIO_BAND_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.ChanceLimitImpl <em>Chance Limit</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.ChanceLimitImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getChanceLimit()
	 * @generated
	 */
	int CHANCE_LIMIT = 30;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHANCE_LIMIT__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHANCE_LIMIT__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHANCE_LIMIT__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHANCE_LIMIT__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Greatest</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHANCE_LIMIT__GREATEST = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The number of structural features of the '<em>Chance Limit</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CHANCE_LIMIT_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.FitChartImpl <em>Fit Chart</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.FitChartImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getFitChart()
	 * @generated
	 */
	int FIT_CHART = 31;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__EXTRAS = DOCUMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Format</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__FORMAT = DOCUMENT__FORMAT;

	/**
	 * The feature id for the '<em><b>Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__VERSION = DOCUMENT__VERSION;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__TITLE = DOCUMENT__TITLE;

	/**
	 * The feature id for the '<em><b>Revision</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__REVISION = DOCUMENT__REVISION;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__DATE = DOCUMENT__DATE;

	/**
	 * The feature id for the '<em><b>Sources</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__SOURCES = DOCUMENT__SOURCES;

	/**
	 * The feature id for the '<em><b>Audience</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__AUDIENCE = DOCUMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Author</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__AUTHOR = DOCUMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Libraries</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__LIBRARIES = DOCUMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Rules</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__RULES = DOCUMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Outer</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__OUTER = DOCUMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Inner</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__INNER = DOCUMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Conditions</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__CONDITIONS = DOCUMENT_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Path</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__PATH = DOCUMENT_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Lesion</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__LESION = DOCUMENT_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Paper</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__PAPER = DOCUMENT_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Footnotes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__FOOTNOTES = DOCUMENT_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Sign Off</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART__SIGN_OFF = DOCUMENT_FEATURE_COUNT + 11;

	/**
	 * The number of structural features of the '<em>Fit Chart</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FIT_CHART_FEATURE_COUNT = DOCUMENT_FEATURE_COUNT + 12;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.SignOffImpl <em>Sign Off</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.SignOffImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getSignOff()
	 * @generated
	 */
	int SIGN_OFF = 32;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIGN_OFF__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIGN_OFF__BY = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIGN_OFF__DATE = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Rule Set</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIGN_OFF__RULE_SET = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Asked</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIGN_OFF__ASKED = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Documents</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIGN_OFF__DOCUMENTS = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Inner</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIGN_OFF__INNER = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Rows</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIGN_OFF__ROWS = ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Sign Off</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIGN_OFF_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 7;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.SignedRowImpl <em>Signed Row</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.SignedRowImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getSignedRow()
	 * @generated
	 */
	int SIGNED_ROW = 33;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIGNED_ROW__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Outer</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIGNED_ROW__OUTER = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>In</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIGNED_ROW__IN = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Out</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIGNED_ROW__OUT = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Signed Row</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIGNED_ROW_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.AxisImpl <em>Axis</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.AxisImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getAxis()
	 * @generated
	 */
	int AXIS = 34;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AXIS__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Kinds</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AXIS__KINDS = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Devices</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AXIS__DEVICES = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Hidden</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AXIS__HIDDEN = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Group By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AXIS__GROUP_BY = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Sort By</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AXIS__SORT_BY = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Axis</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int AXIS_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.ConditionsImpl <em>Conditions</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.ConditionsImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getConditions()
	 * @generated
	 */
	int CONDITIONS = 35;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONDITIONS__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Direction</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONDITIONS__DIRECTION = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Wire</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONDITIONS__WIRE = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Reach</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONDITIONS__REACH = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Inside</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONDITIONS__INSIDE = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Through</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONDITIONS__THROUGH = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Bends</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONDITIONS__BENDS = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>After Inflation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONDITIONS__AFTER_INFLATION = ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Conditions</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CONDITIONS_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 7;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.OccupantImpl <em>Occupant</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.OccupantImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getOccupant()
	 * @generated
	 */
	int OCCUPANT = 36;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OCCUPANT__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Device</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OCCUPANT__DEVICE = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Wire</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OCCUPANT__WIRE = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Tip Ahead</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OCCUPANT__TIP_AHEAD = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Used</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OCCUPANT__USED = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Occupant</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int OCCUPANT_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.ThroughExtensionImpl <em>Through Extension</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.ThroughExtensionImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getThroughExtension()
	 * @generated
	 */
	int THROUGH_EXTENSION = 37;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int THROUGH_EXTENSION__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Extension</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int THROUGH_EXTENSION__EXTENSION = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Protrusion</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int THROUGH_EXTENSION__PROTRUSION = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Through Extension</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int THROUGH_EXTENSION_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.BendImpl <em>Bend</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.BendImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getBend()
	 * @generated
	 */
	int BEND = 38;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BEND__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Where</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BEND__WHERE = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Radius</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BEND__RADIUS = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Angle Degrees</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BEND__ANGLE_DEGREES = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Vessel Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BEND__VESSEL_DIAMETER = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Bend</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int BEND_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.VesselPathImpl <em>Vessel Path</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.VesselPathImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getVesselPath()
	 * @generated
	 */
	int VESSEL_PATH = 39;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL_PATH__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL_PATH__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL_PATH__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL_PATH__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL_PATH__NAME = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Segments</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL_PATH__SEGMENTS = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Vessel Path</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL_PATH_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.VesselSegmentImpl <em>Vessel Segment</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.VesselSegmentImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getVesselSegment()
	 * @generated
	 */
	int VESSEL_SEGMENT = 40;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL_SEGMENT__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL_SEGMENT__NAME = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL_SEGMENT__LENGTH = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL_SEGMENT__DIAMETER = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Bend Radius</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL_SEGMENT__BEND_RADIUS = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Bend Angle Degrees</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL_SEGMENT__BEND_ANGLE_DEGREES = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Vessel Segment</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int VESSEL_SEGMENT_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.LesionImpl <em>Lesion</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.LesionImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getLesion()
	 * @generated
	 */
	int LESION = 41;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION__NAME = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION__AT = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION__LENGTH = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION__DIAMETER = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Reference</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION__REFERENCE = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Lesion</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 5;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.PaperImpl <em>Paper</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.PaperImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getPaper()
	 * @generated
	 */
	int PAPER = 42;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAPER__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Size</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAPER__SIZE = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Orientation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAPER__ORIENTATION = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Primary Unit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAPER__PRIMARY_UNIT = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Show Numbers</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAPER__SHOW_NUMBERS = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Paper</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PAPER_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.TechniqueLibraryImpl <em>Technique Library</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.TechniqueLibraryImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getTechniqueLibrary()
	 * @generated
	 */
	int TECHNIQUE_LIBRARY = 43;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE_LIBRARY__EXTRAS = DOCUMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Format</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE_LIBRARY__FORMAT = DOCUMENT__FORMAT;

	/**
	 * The feature id for the '<em><b>Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE_LIBRARY__VERSION = DOCUMENT__VERSION;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE_LIBRARY__TITLE = DOCUMENT__TITLE;

	/**
	 * The feature id for the '<em><b>Revision</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE_LIBRARY__REVISION = DOCUMENT__REVISION;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE_LIBRARY__DATE = DOCUMENT__DATE;

	/**
	 * The feature id for the '<em><b>Sources</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE_LIBRARY__SOURCES = DOCUMENT__SOURCES;

	/**
	 * The feature id for the '<em><b>Situation</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE_LIBRARY__SITUATION = DOCUMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Facts</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE_LIBRARY__FACTS = DOCUMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Setups</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE_LIBRARY__SETUPS = DOCUMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Techniques</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE_LIBRARY__TECHNIQUES = DOCUMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Bail Out</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE_LIBRARY__BAIL_OUT = DOCUMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Stop Rules</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE_LIBRARY__STOP_RULES = DOCUMENT_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Technique Library</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE_LIBRARY_FEATURE_COUNT = DOCUMENT_FEATURE_COUNT + 6;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.FactImpl <em>Fact</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.FactImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getFact()
	 * @generated
	 */
	int FACT = 44;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FACT__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FACT__ID = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Words</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FACT__WORDS = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Fact</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int FACT_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.MoveImpl <em>Move</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.MoveImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getMove()
	 * @generated
	 */
	int MOVE = 45;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOVE__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOVE__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOVE__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOVE__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOVE__ID = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOVE__NAME = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Hazard</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOVE__HAZARD = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Roles</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOVE__ROLES = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Needs</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOVE__NEEDS = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Setups</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOVE__SETUPS = SOURCED_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Move</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int MOVE_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 6;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.CostedImpl <em>Costed</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.CostedImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getCosted()
	 * @generated
	 */
	int COSTED = 46;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COSTED__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COSTED__MINUTES = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Contrast Ml</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COSTED__CONTRAST_ML = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Dose Mgy</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COSTED__DOSE_MGY = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Money</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COSTED__MONEY = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Costed</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COSTED_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.AdvisedImpl <em>Advised</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.AdvisedImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getAdvised()
	 * @generated
	 */
	int ADVISED = 47;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ADVISED__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ADVISED__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ADVISED__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ADVISED__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Changes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ADVISED__CHANGES = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Cautions</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ADVISED__CAUTIONS = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Off Label</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ADVISED__OFF_LABEL = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Stop</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ADVISED__STOP = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Published</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ADVISED__PUBLISHED = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Advised</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ADVISED_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 5;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.SetupImpl <em>Setup</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.SetupImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getSetup()
	 * @generated
	 */
	int SETUP = 48;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETUP__EXTRAS = MOVE__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETUP__SOURCE = MOVE__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETUP__PAGE = MOVE__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETUP__NOTE = MOVE__NOTE;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETUP__ID = MOVE__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETUP__NAME = MOVE__NAME;

	/**
	 * The feature id for the '<em><b>Hazard</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETUP__HAZARD = MOVE__HAZARD;

	/**
	 * The feature id for the '<em><b>Roles</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETUP__ROLES = MOVE__ROLES;

	/**
	 * The feature id for the '<em><b>Needs</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETUP__NEEDS = MOVE__NEEDS;

	/**
	 * The feature id for the '<em><b>Setups</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETUP__SETUPS = MOVE__SETUPS;

	/**
	 * The feature id for the '<em><b>Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETUP__MINUTES = MOVE_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Contrast Ml</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETUP__CONTRAST_ML = MOVE_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Dose Mgy</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETUP__DOSE_MGY = MOVE_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Money</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETUP__MONEY = MOVE_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Changes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETUP__CHANGES = MOVE_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Cautions</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETUP__CAUTIONS = MOVE_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Off Label</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETUP__OFF_LABEL = MOVE_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Stop</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETUP__STOP = MOVE_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Published</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETUP__PUBLISHED = MOVE_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Leaves</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETUP__LEAVES = MOVE_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Exchanges Wire</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETUP__EXCHANGES_WIRE = MOVE_FEATURE_COUNT + 10;

	/**
	 * The number of structural features of the '<em>Setup</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SETUP_FEATURE_COUNT = MOVE_FEATURE_COUNT + 11;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.TechniqueImpl <em>Technique</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.TechniqueImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getTechnique()
	 * @generated
	 */
	int TECHNIQUE = 49;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE__EXTRAS = MOVE__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE__SOURCE = MOVE__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE__PAGE = MOVE__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE__NOTE = MOVE__NOTE;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE__ID = MOVE__ID;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE__NAME = MOVE__NAME;

	/**
	 * The feature id for the '<em><b>Hazard</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE__HAZARD = MOVE__HAZARD;

	/**
	 * The feature id for the '<em><b>Roles</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE__ROLES = MOVE__ROLES;

	/**
	 * The feature id for the '<em><b>Needs</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE__NEEDS = MOVE__NEEDS;

	/**
	 * The feature id for the '<em><b>Setups</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE__SETUPS = MOVE__SETUPS;

	/**
	 * The feature id for the '<em><b>Changes</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE__CHANGES = MOVE_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Cautions</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE__CAUTIONS = MOVE_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Off Label</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE__OFF_LABEL = MOVE_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Stop</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE__STOP = MOVE_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Published</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE__PUBLISHED = MOVE_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Axis</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE__AXIS = MOVE_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>After</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE__AFTER = MOVE_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Tries</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE__TRIES = MOVE_FEATURE_COUNT + 7;

	/**
	 * The number of structural features of the '<em>Technique</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int TECHNIQUE_FEATURE_COUNT = MOVE_FEATURE_COUNT + 8;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.RoleImpl <em>Role</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.RoleImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getRole()
	 * @generated
	 */
	int ROLE = 50;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLE__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLE__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLE__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLE__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLE__ID = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLE__NAME = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Kinds</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLE__KINDS = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Devices</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLE__DEVICES = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Equipment</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLE__EQUIPMENT = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Nominal Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLE__NOMINAL_DIAMETER = SOURCED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Nominal Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLE__NOMINAL_LENGTH = SOURCED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Wire</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLE__WIRE = SOURCED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>To Vessel From</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLE__TO_VESSEL_FROM = SOURCED_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>To Vessel To</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLE__TO_VESSEL_TO = SOURCED_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Task</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLE__TASK = SOURCED_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Carrier</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLE__CARRIER = SOURCED_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Goal</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLE__GOAL = SOURCED_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Count</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLE__COUNT = SOURCED_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Only If Wire Is Short</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLE__ONLY_IF_WIRE_IS_SHORT = SOURCED_FEATURE_COUNT + 14;

	/**
	 * The number of structural features of the '<em>Role</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ROLE_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 15;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.NeedImpl <em>Need</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.NeedImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getNeed()
	 * @generated
	 */
	int NEED = 51;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NEED__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Fact</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NEED__FACT = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Vessel</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NEED__VESSEL = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Branch</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NEED__BRANCH = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Need</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int NEED_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.PlacementImpl <em>Placement</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.PlacementImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getPlacement()
	 * @generated
	 */
	int PLACEMENT = 52;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACEMENT__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Slot</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACEMENT__SLOT = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Role</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACEMENT__ROLE = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Protrusion</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACEMENT__PROTRUSION = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Placement</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLACEMENT_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.PlannedTryImpl <em>Planned Try</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.PlannedTryImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getPlannedTry()
	 * @generated
	 */
	int PLANNED_TRY = 53;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLANNED_TRY__EXTRAS = COSTED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLANNED_TRY__MINUTES = COSTED__MINUTES;

	/**
	 * The feature id for the '<em><b>Contrast Ml</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLANNED_TRY__CONTRAST_ML = COSTED__CONTRAST_ML;

	/**
	 * The feature id for the '<em><b>Dose Mgy</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLANNED_TRY__DOSE_MGY = COSTED__DOSE_MGY;

	/**
	 * The feature id for the '<em><b>Money</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLANNED_TRY__MONEY = COSTED__MONEY;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLANNED_TRY__SOURCE = COSTED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLANNED_TRY__PAGE = COSTED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLANNED_TRY__NOTE = COSTED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Successes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLANNED_TRY__SUCCESSES = COSTED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Failures</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLANNED_TRY__FAILURES = COSTED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Prior</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLANNED_TRY__PRIOR = COSTED_FEATURE_COUNT + 5;

	/**
	 * The number of structural features of the '<em>Planned Try</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PLANNED_TRY_FEATURE_COUNT = COSTED_FEATURE_COUNT + 6;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.PriorImpl <em>Prior</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.PriorImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getPrior()
	 * @generated
	 */
	int PRIOR = 54;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRIOR__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Successes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRIOR__SUCCESSES = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Failures</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRIOR__FAILURES = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Label</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRIOR__LABEL = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Prior</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PRIOR_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.PublishedImpl <em>Published</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.PublishedImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getPublished()
	 * @generated
	 */
	int PUBLISHED = 55;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUBLISHED__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUBLISHED__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUBLISHED__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUBLISHED__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Text</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUBLISHED__TEXT = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The number of structural features of the '<em>Published</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PUBLISHED_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.StopRuleImpl <em>Stop Rule</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.StopRuleImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getStopRule()
	 * @generated
	 */
	int STOP_RULE = 56;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOP_RULE__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOP_RULE__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOP_RULE__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOP_RULE__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOP_RULE__ID = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Words</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOP_RULE__WORDS = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Resource</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOP_RULE__RESOURCE = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Limit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOP_RULE__LIMIT = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Stop Rule</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOP_RULE_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.CaseDocumentImpl <em>Case Document</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.CaseDocumentImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getCaseDocument()
	 * @generated
	 */
	int CASE_DOCUMENT = 57;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_DOCUMENT__EXTRAS = DOCUMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Format</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_DOCUMENT__FORMAT = DOCUMENT__FORMAT;

	/**
	 * The feature id for the '<em><b>Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_DOCUMENT__VERSION = DOCUMENT__VERSION;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_DOCUMENT__TITLE = DOCUMENT__TITLE;

	/**
	 * The feature id for the '<em><b>Revision</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_DOCUMENT__REVISION = DOCUMENT__REVISION;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_DOCUMENT__DATE = DOCUMENT__DATE;

	/**
	 * The feature id for the '<em><b>Sources</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_DOCUMENT__SOURCES = DOCUMENT__SOURCES;

	/**
	 * The feature id for the '<em><b>Libraries</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_DOCUMENT__LIBRARIES = DOCUMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Rules</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_DOCUMENT__RULES = DOCUMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Techniques</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_DOCUMENT__TECHNIQUES = DOCUMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Shelf</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_DOCUMENT__SHELF = DOCUMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Day</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_DOCUMENT__DAY = DOCUMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Access</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_DOCUMENT__ACCESS = DOCUMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>System</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_DOCUMENT__SYSTEM = DOCUMENT_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Path</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_DOCUMENT__PATH = DOCUMENT_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Lesion</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_DOCUMENT__LESION = DOCUMENT_FEATURE_COUNT + 8;

	/**
	 * The feature id for the '<em><b>Branch</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_DOCUMENT__BRANCH = DOCUMENT_FEATURE_COUNT + 9;

	/**
	 * The feature id for the '<em><b>Deliver</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_DOCUMENT__DELIVER = DOCUMENT_FEATURE_COUNT + 10;

	/**
	 * The feature id for the '<em><b>Facts</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_DOCUMENT__FACTS = DOCUMENT_FEATURE_COUNT + 11;

	/**
	 * The feature id for the '<em><b>Measures</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_DOCUMENT__MEASURES = DOCUMENT_FEATURE_COUNT + 12;

	/**
	 * The feature id for the '<em><b>Patient</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_DOCUMENT__PATIENT = DOCUMENT_FEATURE_COUNT + 13;

	/**
	 * The feature id for the '<em><b>Aim</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_DOCUMENT__AIM = DOCUMENT_FEATURE_COUNT + 14;

	/**
	 * The feature id for the '<em><b>Spent</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_DOCUMENT__SPENT = DOCUMENT_FEATURE_COUNT + 15;

	/**
	 * The feature id for the '<em><b>Log</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_DOCUMENT__LOG = DOCUMENT_FEATURE_COUNT + 16;

	/**
	 * The feature id for the '<em><b>Closing</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_DOCUMENT__CLOSING = DOCUMENT_FEATURE_COUNT + 17;

	/**
	 * The number of structural features of the '<em>Case Document</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_DOCUMENT_FEATURE_COUNT = DOCUMENT_FEATURE_COUNT + 18;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.AccessImpl <em>Access</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.AccessImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getAccess()
	 * @generated
	 */
	int ACCESS = 58;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCESS__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCESS__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCESS__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCESS__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Site</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCESS__SITE = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Vessel</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCESS__VESSEL = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Access</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int ACCESS_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.SystemInPlaceImpl <em>System In Place</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.SystemInPlaceImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getSystemInPlace()
	 * @generated
	 */
	int SYSTEM_IN_PLACE = 59;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SYSTEM_IN_PLACE__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Sheath</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SYSTEM_IN_PLACE__SHEATH = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Valve</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SYSTEM_IN_PLACE__VALVE = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Guide</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SYSTEM_IN_PLACE__GUIDE = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Extension</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SYSTEM_IN_PLACE__EXTENSION = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Microcatheter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SYSTEM_IN_PLACE__MICROCATHETER = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Main Wire</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SYSTEM_IN_PLACE__MAIN_WIRE = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Second Wire</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SYSTEM_IN_PLACE__SECOND_WIRE = ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Anchor</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SYSTEM_IN_PLACE__ANCHOR = ELEMENT_FEATURE_COUNT + 7;

	/**
	 * The number of structural features of the '<em>System In Place</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SYSTEM_IN_PLACE_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 8;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.SideBranchImpl <em>Side Branch</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.SideBranchImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getSideBranch()
	 * @generated
	 */
	int SIDE_BRANCH = 60;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIDE_BRANCH__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIDE_BRANCH__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIDE_BRANCH__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIDE_BRANCH__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIDE_BRANCH__NAME = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>At</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIDE_BRANCH__AT = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Diameter</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIDE_BRANCH__DIAMETER = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Depth</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIDE_BRANCH__DEPTH = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Side Branch</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SIDE_BRANCH_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.StatedFactImpl <em>Stated Fact</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.StatedFactImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getStatedFact()
	 * @generated
	 */
	int STATED_FACT = 61;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STATED_FACT__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Fact</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STATED_FACT__FACT = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Holds</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STATED_FACT__HOLDS = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The number of structural features of the '<em>Stated Fact</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STATED_FACT_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.LesionMeasuresImpl <em>Lesion Measures</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.LesionMeasuresImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getLesionMeasures()
	 * @generated
	 */
	int LESION_MEASURES = 62;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION_MEASURES__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION_MEASURES__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION_MEASURES__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION_MEASURES__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Blunt Stump</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION_MEASURES__BLUNT_STUMP = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Calcification</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION_MEASURES__CALCIFICATION = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Bend Degrees</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION_MEASURES__BEND_DEGREES = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Failed Before</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION_MEASURES__FAILED_BEFORE = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Occlusion Months</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION_MEASURES__OCCLUSION_MONTHS = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Calcium Degrees</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION_MEASURES__CALCIUM_DEGREES = SOURCED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Calcium Thickness</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION_MEASURES__CALCIUM_THICKNESS = SOURCED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Calcium Length</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION_MEASURES__CALCIUM_LENGTH = SOURCED_FEATURE_COUNT + 7;

	/**
	 * The feature id for the '<em><b>Traits</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION_MEASURES__TRAITS = SOURCED_FEATURE_COUNT + 8;

	/**
	 * The number of structural features of the '<em>Lesion Measures</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LESION_MEASURES_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 9;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.PatientFiguresImpl <em>Patient Figures</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.PatientFiguresImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getPatientFigures()
	 * @generated
	 */
	int PATIENT_FIGURES = 63;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATIENT_FIGURES__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Age</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATIENT_FIGURES__AGE = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Weight</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATIENT_FIGURES__WEIGHT = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Creatinine</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATIENT_FIGURES__CREATININE = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Sex</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATIENT_FIGURES__SEX = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Patient Figures</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int PATIENT_FIGURES_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.CaseAimImpl <em>Case Aim</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.CaseAimImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getCaseAim()
	 * @generated
	 */
	int CASE_AIM = 64;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_AIM__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Objective</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_AIM__OBJECTIVE = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Stopping Cost</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_AIM__STOPPING_COST = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Tiers First</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_AIM__TIERS_FIRST = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>One New Risk AStep</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_AIM__ONE_NEW_RISK_ASTEP = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Same Axis Discount</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_AIM__SAME_AXIS_DISCOUNT = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Budgets Limit</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_AIM__BUDGETS_LIMIT = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Budgets</b></em>' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_AIM__BUDGETS = ELEMENT_FEATURE_COUNT + 6;

	/**
	 * The number of structural features of the '<em>Case Aim</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CASE_AIM_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 7;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.CostsImpl <em>Costs</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.CostsImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getCosts()
	 * @generated
	 */
	int COSTS = 65;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COSTS__EXTRAS = COSTED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COSTS__MINUTES = COSTED__MINUTES;

	/**
	 * The feature id for the '<em><b>Contrast Ml</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COSTS__CONTRAST_ML = COSTED__CONTRAST_ML;

	/**
	 * The feature id for the '<em><b>Dose Mgy</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COSTS__DOSE_MGY = COSTED__DOSE_MGY;

	/**
	 * The feature id for the '<em><b>Money</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COSTS__MONEY = COSTED__MONEY;

	/**
	 * The number of structural features of the '<em>Costs</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int COSTS_FEATURE_COUNT = COSTED_FEATURE_COUNT + 0;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.LoggedAttemptImpl <em>Logged Attempt</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.LoggedAttemptImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getLoggedAttempt()
	 * @generated
	 */
	int LOGGED_ATTEMPT = 66;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGED_ATTEMPT__EXTRAS = COSTED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Minutes</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGED_ATTEMPT__MINUTES = COSTED__MINUTES;

	/**
	 * The feature id for the '<em><b>Contrast Ml</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGED_ATTEMPT__CONTRAST_ML = COSTED__CONTRAST_ML;

	/**
	 * The feature id for the '<em><b>Dose Mgy</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGED_ATTEMPT__DOSE_MGY = COSTED__DOSE_MGY;

	/**
	 * The feature id for the '<em><b>Money</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGED_ATTEMPT__MONEY = COSTED__MONEY;

	/**
	 * The feature id for the '<em><b>Move</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGED_ATTEMPT__MOVE = COSTED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Outcome</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGED_ATTEMPT__OUTCOME = COSTED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Units</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGED_ATTEMPT__UNITS = COSTED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Remark</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGED_ATTEMPT__REMARK = COSTED_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Logged Attempt</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int LOGGED_ATTEMPT_FEATURE_COUNT = COSTED_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.UsedUnitImpl <em>Used Unit</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.UsedUnitImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getUsedUnit()
	 * @generated
	 */
	int USED_UNIT = 67;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USED_UNIT__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Role</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USED_UNIT__ROLE = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Item</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USED_UNIT__ITEM = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Lot</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USED_UNIT__LOT = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Used Unit</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int USED_UNIT_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.ClosingImpl <em>Closing</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.ClosingImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getClosing()
	 * @generated
	 */
	int CLOSING = 68;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLOSING__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Closed</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLOSING__CLOSED = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Ended</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLOSING__ENDED = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Plan</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLOSING__PLAN = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Devices</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLOSING__DEVICES = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Hashes</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLOSING__HASHES = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Closing</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLOSING_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.ClosedStepImpl <em>Closed Step</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.ClosedStepImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getClosedStep()
	 * @generated
	 */
	int CLOSED_STEP = 69;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLOSED_STEP__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Move</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLOSED_STEP__MOVE = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLOSED_STEP__NAME = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Devices</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLOSED_STEP__DEVICES = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Closed Step</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLOSED_STEP_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.ClosedDeviceImpl <em>Closed Device</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.ClosedDeviceImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getClosedDevice()
	 * @generated
	 */
	int CLOSED_DEVICE = 70;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLOSED_DEVICE__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLOSED_DEVICE__ID = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Item</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLOSED_DEVICE__ITEM = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Lot</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLOSED_DEVICE__LOT = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Expiry</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLOSED_DEVICE__EXPIRY = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The number of structural features of the '<em>Closed Device</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int CLOSED_DEVICE_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.DocumentHashImpl <em>Document Hash</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.DocumentHashImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getDocumentHash()
	 * @generated
	 */
	int DOCUMENT_HASH = 71;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT_HASH__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>File</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT_HASH__FILE = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Revision</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT_HASH__REVISION = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Sha256</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT_HASH__SHA256 = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Document Hash</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int DOCUMENT_HASH_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.ShelfDocumentImpl <em>Shelf Document</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.ShelfDocumentImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getShelfDocument()
	 * @generated
	 */
	int SHELF_DOCUMENT = 72;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHELF_DOCUMENT__EXTRAS = DOCUMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Format</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHELF_DOCUMENT__FORMAT = DOCUMENT__FORMAT;

	/**
	 * The feature id for the '<em><b>Version</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHELF_DOCUMENT__VERSION = DOCUMENT__VERSION;

	/**
	 * The feature id for the '<em><b>Title</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHELF_DOCUMENT__TITLE = DOCUMENT__TITLE;

	/**
	 * The feature id for the '<em><b>Revision</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHELF_DOCUMENT__REVISION = DOCUMENT__REVISION;

	/**
	 * The feature id for the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHELF_DOCUMENT__DATE = DOCUMENT__DATE;

	/**
	 * The feature id for the '<em><b>Sources</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHELF_DOCUMENT__SOURCES = DOCUMENT__SOURCES;

	/**
	 * The feature id for the '<em><b>Libraries</b></em>' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHELF_DOCUMENT__LIBRARIES = DOCUMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Currency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHELF_DOCUMENT__CURRENCY = DOCUMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Items</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHELF_DOCUMENT__ITEMS = DOCUMENT_FEATURE_COUNT + 2;

	/**
	 * The number of structural features of the '<em>Shelf Document</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int SHELF_DOCUMENT_FEATURE_COUNT = DOCUMENT_FEATURE_COUNT + 3;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.StockItemImpl <em>Stock Item</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.StockItemImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getStockItem()
	 * @generated
	 */
	int STOCK_ITEM = 73;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_ITEM__EXTRAS = SOURCED__EXTRAS;

	/**
	 * The feature id for the '<em><b>Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_ITEM__SOURCE = SOURCED__SOURCE;

	/**
	 * The feature id for the '<em><b>Page</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_ITEM__PAGE = SOURCED__PAGE;

	/**
	 * The feature id for the '<em><b>Note</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_ITEM__NOTE = SOURCED__NOTE;

	/**
	 * The feature id for the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_ITEM__ID = SOURCED_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_ITEM__NAME = SOURCED_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Device</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_ITEM__DEVICE = SOURCED_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Equipment</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_ITEM__EQUIPMENT = SOURCED_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_ITEM__CODE = SOURCED_FEATURE_COUNT + 4;

	/**
	 * The feature id for the '<em><b>Par Level</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_ITEM__PAR_LEVEL = SOURCED_FEATURE_COUNT + 5;

	/**
	 * The feature id for the '<em><b>Price</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_ITEM__PRICE = SOURCED_FEATURE_COUNT + 6;

	/**
	 * The feature id for the '<em><b>Lots</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_ITEM__LOTS = SOURCED_FEATURE_COUNT + 7;

	/**
	 * The number of structural features of the '<em>Stock Item</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_ITEM_FEATURE_COUNT = SOURCED_FEATURE_COUNT + 8;

	/**
	 * The meta object id for the '{@link org.ferrule.model.impl.StockLotImpl <em>Stock Lot</em>}' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.impl.StockLotImpl
	 * @see org.ferrule.model.impl.ModelPackageImpl#getStockLot()
	 * @generated
	 */
	int STOCK_LOT = 74;

	/**
	 * The feature id for the '<em><b>Extras</b></em>' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_LOT__EXTRAS = ELEMENT__EXTRAS;

	/**
	 * The feature id for the '<em><b>Lot</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_LOT__LOT = ELEMENT_FEATURE_COUNT + 0;

	/**
	 * The feature id for the '<em><b>Expiry</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_LOT__EXPIRY = ELEMENT_FEATURE_COUNT + 1;

	/**
	 * The feature id for the '<em><b>Quantity</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_LOT__QUANTITY = ELEMENT_FEATURE_COUNT + 2;

	/**
	 * The feature id for the '<em><b>Location</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_LOT__LOCATION = ELEMENT_FEATURE_COUNT + 3;

	/**
	 * The feature id for the '<em><b>Serial</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_LOT__SERIAL = ELEMENT_FEATURE_COUNT + 4;

	/**
	 * The number of structural features of the '<em>Stock Lot</em>' class.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	int STOCK_LOT_FEATURE_COUNT = ELEMENT_FEATURE_COUNT + 5;

	/**
	 * The meta object id for the '{@link org.ferrule.model.SourceKind <em>Source Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.SourceKind
	 * @see org.ferrule.model.impl.ModelPackageImpl#getSourceKind()
	 * @generated
	 */
	int SOURCE_KIND = 75;

	/**
	 * The meta object id for the '{@link org.ferrule.model.DeviceKind <em>Device Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.DeviceKind
	 * @see org.ferrule.model.impl.ModelPackageImpl#getDeviceKind()
	 * @generated
	 */
	int DEVICE_KIND = 76;

	/**
	 * The meta object id for the '{@link org.ferrule.model.LumenUse <em>Lumen Use</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.LumenUse
	 * @see org.ferrule.model.impl.ModelPackageImpl#getLumenUse()
	 * @generated
	 */
	int LUMEN_USE = 77;

	/**
	 * The meta object id for the '{@link org.ferrule.model.LumenOpening <em>Lumen Opening</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.LumenOpening
	 * @see org.ferrule.model.impl.ModelPackageImpl#getLumenOpening()
	 * @generated
	 */
	int LUMEN_OPENING = 78;

	/**
	 * The meta object id for the '{@link org.ferrule.model.CutterType <em>Cutter Type</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.CutterType
	 * @see org.ferrule.model.impl.ModelPackageImpl#getCutterType()
	 * @generated
	 */
	int CUTTER_TYPE = 79;

	/**
	 * The meta object id for the '{@link org.ferrule.model.TransducerType <em>Transducer Type</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.TransducerType
	 * @see org.ferrule.model.impl.ModelPackageImpl#getTransducerType()
	 * @generated
	 */
	int TRANSDUCER_TYPE = 80;

	/**
	 * The meta object id for the '{@link org.ferrule.model.ClaimType <em>Claim Type</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.ClaimType
	 * @see org.ferrule.model.impl.ModelPackageImpl#getClaimType()
	 * @generated
	 */
	int CLAIM_TYPE = 81;

	/**
	 * The meta object id for the '{@link org.ferrule.model.Phase <em>Phase</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.Phase
	 * @see org.ferrule.model.impl.ModelPackageImpl#getPhase()
	 * @generated
	 */
	int PHASE = 82;

	/**
	 * The meta object id for the '{@link org.ferrule.model.BenchOutcome <em>Bench Outcome</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.BenchOutcome
	 * @see org.ferrule.model.impl.ModelPackageImpl#getBenchOutcome()
	 * @generated
	 */
	int BENCH_OUTCOME = 83;

	/**
	 * The meta object id for the '{@link org.ferrule.model.FigureClass <em>Figure Class</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.FigureClass
	 * @see org.ferrule.model.impl.ModelPackageImpl#getFigureClass()
	 * @generated
	 */
	int FIGURE_CLASS = 84;

	/**
	 * The meta object id for the '{@link org.ferrule.model.FlowUse <em>Flow Use</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.FlowUse
	 * @see org.ferrule.model.impl.ModelPackageImpl#getFlowUse()
	 * @generated
	 */
	int FLOW_USE = 85;

	/**
	 * The meta object id for the '{@link org.ferrule.model.AllowancePurpose <em>Allowance Purpose</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.AllowancePurpose
	 * @see org.ferrule.model.impl.ModelPackageImpl#getAllowancePurpose()
	 * @generated
	 */
	int ALLOWANCE_PURPOSE = 86;

	/**
	 * The meta object id for the '{@link org.ferrule.model.RatioUse <em>Ratio Use</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.RatioUse
	 * @see org.ferrule.model.impl.ModelPackageImpl#getRatioUse()
	 * @generated
	 */
	int RATIO_USE = 87;

	/**
	 * The meta object id for the '{@link org.ferrule.model.Grouping <em>Grouping</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.Grouping
	 * @see org.ferrule.model.impl.ModelPackageImpl#getGrouping()
	 * @generated
	 */
	int GROUPING = 88;

	/**
	 * The meta object id for the '{@link org.ferrule.model.Sorting <em>Sorting</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.Sorting
	 * @see org.ferrule.model.impl.ModelPackageImpl#getSorting()
	 * @generated
	 */
	int SORTING = 89;

	/**
	 * The meta object id for the '{@link org.ferrule.model.Direction <em>Direction</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.Direction
	 * @see org.ferrule.model.impl.ModelPackageImpl#getDirection()
	 * @generated
	 */
	int DIRECTION = 90;

	/**
	 * The meta object id for the '{@link org.ferrule.model.BendPlace <em>Bend Place</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.BendPlace
	 * @see org.ferrule.model.impl.ModelPackageImpl#getBendPlace()
	 * @generated
	 */
	int BEND_PLACE = 91;

	/**
	 * The meta object id for the '{@link org.ferrule.model.PaperSize <em>Paper Size</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.PaperSize
	 * @see org.ferrule.model.impl.ModelPackageImpl#getPaperSize()
	 * @generated
	 */
	int PAPER_SIZE = 92;

	/**
	 * The meta object id for the '{@link org.ferrule.model.Orientation <em>Orientation</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.Orientation
	 * @see org.ferrule.model.impl.ModelPackageImpl#getOrientation()
	 * @generated
	 */
	int ORIENTATION = 93;

	/**
	 * The meta object id for the '{@link org.ferrule.model.PrimaryUnit <em>Primary Unit</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.PrimaryUnit
	 * @see org.ferrule.model.impl.ModelPackageImpl#getPrimaryUnit()
	 * @generated
	 */
	int PRIMARY_UNIT = 94;

	/**
	 * The meta object id for the '{@link org.ferrule.model.ShownNumbers <em>Shown Numbers</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.ShownNumbers
	 * @see org.ferrule.model.impl.ModelPackageImpl#getShownNumbers()
	 * @generated
	 */
	int SHOWN_NUMBERS = 95;

	/**
	 * The meta object id for the '{@link org.ferrule.model.TechniqueAxis <em>Technique Axis</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.TechniqueAxis
	 * @see org.ferrule.model.impl.ModelPackageImpl#getTechniqueAxis()
	 * @generated
	 */
	int TECHNIQUE_AXIS = 96;

	/**
	 * The meta object id for the '{@link org.ferrule.model.Hazard <em>Hazard</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.Hazard
	 * @see org.ferrule.model.impl.ModelPackageImpl#getHazard()
	 * @generated
	 */
	int HAZARD = 97;

	/**
	 * The meta object id for the '{@link org.ferrule.model.RoleTask <em>Role Task</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.RoleTask
	 * @see org.ferrule.model.impl.ModelPackageImpl#getRoleTask()
	 * @generated
	 */
	int ROLE_TASK = 98;

	/**
	 * The meta object id for the '{@link org.ferrule.model.Carrier <em>Carrier</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.Carrier
	 * @see org.ferrule.model.impl.ModelPackageImpl#getCarrier()
	 * @generated
	 */
	int CARRIER = 99;

	/**
	 * The meta object id for the '{@link org.ferrule.model.RoleGoal <em>Role Goal</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.RoleGoal
	 * @see org.ferrule.model.impl.ModelPackageImpl#getRoleGoal()
	 * @generated
	 */
	int ROLE_GOAL = 100;

	/**
	 * The meta object id for the '{@link org.ferrule.model.SystemSlot <em>System Slot</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.SystemSlot
	 * @see org.ferrule.model.impl.ModelPackageImpl#getSystemSlot()
	 * @generated
	 */
	int SYSTEM_SLOT = 101;

	/**
	 * The meta object id for the '{@link org.ferrule.model.ResourceKind <em>Resource Kind</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.ResourceKind
	 * @see org.ferrule.model.impl.ModelPackageImpl#getResourceKind()
	 * @generated
	 */
	int RESOURCE_KIND = 102;

	/**
	 * The meta object id for the '{@link org.ferrule.model.AttemptOutcome <em>Attempt Outcome</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.AttemptOutcome
	 * @see org.ferrule.model.impl.ModelPackageImpl#getAttemptOutcome()
	 * @generated
	 */
	int ATTEMPT_OUTCOME = 103;

	/**
	 * The meta object id for the '{@link org.ferrule.model.CaseEnd <em>Case End</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.CaseEnd
	 * @see org.ferrule.model.impl.ModelPackageImpl#getCaseEnd()
	 * @generated
	 */
	int CASE_END = 104;

	/**
	 * The meta object id for the '{@link org.ferrule.model.Sex <em>Sex</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.Sex
	 * @see org.ferrule.model.impl.ModelPackageImpl#getSex()
	 * @generated
	 */
	int SEX = 105;

	/**
	 * The meta object id for the '{@link org.ferrule.model.LesionTrait <em>Lesion Trait</em>}' enum.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.model.LesionTrait
	 * @see org.ferrule.model.impl.ModelPackageImpl#getLesionTrait()
	 * @generated
	 */
	int LESION_TRAIT = 106;

	/**
	 * The meta object id for the '<em>Dimension</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.quantity.Dimension
	 * @see org.ferrule.model.impl.ModelPackageImpl#getDimension()
	 * @generated
	 */
	int DIMENSION = 107;

	/**
	 * The meta object id for the '<em>Pressure</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.quantity.Pressure
	 * @see org.ferrule.model.impl.ModelPackageImpl#getPressure()
	 * @generated
	 */
	int PRESSURE = 108;

	/**
	 * The meta object id for the '<em>Offset</em>' data type.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see org.ferrule.quantity.Offset
	 * @see org.ferrule.model.impl.ModelPackageImpl#getOffset()
	 * @generated
	 */
	int OFFSET = 109;


	/**
	 * Returns the meta object for class '{@link org.ferrule.model.ExtraKey <em>Extra Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Extra Key</em>'.
	 * @see org.ferrule.model.ExtraKey
	 * @generated
	 */
	EClass getExtraKey();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ExtraKey#getKey <em>Key</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Key</em>'.
	 * @see org.ferrule.model.ExtraKey#getKey()
	 * @see #getExtraKey()
	 * @generated
	 */
	EAttribute getExtraKey_Key();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ExtraKey#getJson <em>Json</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Json</em>'.
	 * @see org.ferrule.model.ExtraKey#getJson()
	 * @see #getExtraKey()
	 * @generated
	 */
	EAttribute getExtraKey_Json();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Element <em>Element</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Element</em>'.
	 * @see org.ferrule.model.Element
	 * @generated
	 */
	EClass getElement();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.Element#getExtras <em>Extras</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Extras</em>'.
	 * @see org.ferrule.model.Element#getExtras()
	 * @see #getElement()
	 * @generated
	 */
	EReference getElement_Extras();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Sourced <em>Sourced</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Sourced</em>'.
	 * @see org.ferrule.model.Sourced
	 * @generated
	 */
	EClass getSourced();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Sourced#getSource <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Source</em>'.
	 * @see org.ferrule.model.Sourced#getSource()
	 * @see #getSourced()
	 * @generated
	 */
	EAttribute getSourced_Source();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Sourced#getPage <em>Page</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Page</em>'.
	 * @see org.ferrule.model.Sourced#getPage()
	 * @see #getSourced()
	 * @generated
	 */
	EAttribute getSourced_Page();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Sourced#getNote <em>Note</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Note</em>'.
	 * @see org.ferrule.model.Sourced#getNote()
	 * @see #getSourced()
	 * @generated
	 */
	EAttribute getSourced_Note();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Document <em>Document</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Document</em>'.
	 * @see org.ferrule.model.Document
	 * @generated
	 */
	EClass getDocument();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Document#getFormat <em>Format</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Format</em>'.
	 * @see org.ferrule.model.Document#getFormat()
	 * @see #getDocument()
	 * @generated
	 */
	EAttribute getDocument_Format();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Document#getVersion <em>Version</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Version</em>'.
	 * @see org.ferrule.model.Document#getVersion()
	 * @see #getDocument()
	 * @generated
	 */
	EAttribute getDocument_Version();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Document#getTitle <em>Title</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Title</em>'.
	 * @see org.ferrule.model.Document#getTitle()
	 * @see #getDocument()
	 * @generated
	 */
	EAttribute getDocument_Title();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Document#getRevision <em>Revision</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Revision</em>'.
	 * @see org.ferrule.model.Document#getRevision()
	 * @see #getDocument()
	 * @generated
	 */
	EAttribute getDocument_Revision();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Document#getDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Date</em>'.
	 * @see org.ferrule.model.Document#getDate()
	 * @see #getDocument()
	 * @generated
	 */
	EAttribute getDocument_Date();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.Document#getSources <em>Sources</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Sources</em>'.
	 * @see org.ferrule.model.Document#getSources()
	 * @see #getDocument()
	 * @generated
	 */
	EReference getDocument_Sources();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Source <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Source</em>'.
	 * @see org.ferrule.model.Source
	 * @generated
	 */
	EClass getSource();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Source#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see org.ferrule.model.Source#getId()
	 * @see #getSource()
	 * @generated
	 */
	EAttribute getSource_Id();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Source#getTitle <em>Title</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Title</em>'.
	 * @see org.ferrule.model.Source#getTitle()
	 * @see #getSource()
	 * @generated
	 */
	EAttribute getSource_Title();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Source#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see org.ferrule.model.Source#getKind()
	 * @see #getSource()
	 * @generated
	 */
	EAttribute getSource_Kind();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Source#getRevision <em>Revision</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Revision</em>'.
	 * @see org.ferrule.model.Source#getRevision()
	 * @see #getSource()
	 * @generated
	 */
	EAttribute getSource_Revision();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Source#getDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Date</em>'.
	 * @see org.ferrule.model.Source#getDate()
	 * @see #getSource()
	 * @generated
	 */
	EAttribute getSource_Date();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Source#getReviewer <em>Reviewer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reviewer</em>'.
	 * @see org.ferrule.model.Source#getReviewer()
	 * @see #getSource()
	 * @generated
	 */
	EAttribute getSource_Reviewer();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Source#getReviewed <em>Reviewed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reviewed</em>'.
	 * @see org.ferrule.model.Source#getReviewed()
	 * @see #getSource()
	 * @generated
	 */
	EAttribute getSource_Reviewed();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.DeviceLibrary <em>Device Library</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Device Library</em>'.
	 * @see org.ferrule.model.DeviceLibrary
	 * @generated
	 */
	EClass getDeviceLibrary();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.DeviceLibrary#getLines <em>Lines</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Lines</em>'.
	 * @see org.ferrule.model.DeviceLibrary#getLines()
	 * @see #getDeviceLibrary()
	 * @generated
	 */
	EReference getDeviceLibrary_Lines();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.DeviceLibrary#getDevices <em>Devices</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Devices</em>'.
	 * @see org.ferrule.model.DeviceLibrary#getDevices()
	 * @see #getDeviceLibrary()
	 * @generated
	 */
	EReference getDeviceLibrary_Devices();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.DeviceLibrary#getBench <em>Bench</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Bench</em>'.
	 * @see org.ferrule.model.DeviceLibrary#getBench()
	 * @see #getDeviceLibrary()
	 * @generated
	 */
	EReference getDeviceLibrary_Bench();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.DeviceParts <em>Device Parts</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Device Parts</em>'.
	 * @see org.ferrule.model.DeviceParts
	 * @generated
	 */
	EClass getDeviceParts();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.DeviceParts#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see org.ferrule.model.DeviceParts#getId()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EAttribute getDeviceParts_Id();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.DeviceParts#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.ferrule.model.DeviceParts#getName()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EAttribute getDeviceParts_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.DeviceParts#getKind <em>Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Kind</em>'.
	 * @see org.ferrule.model.DeviceParts#getKind()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EAttribute getDeviceParts_Kind();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.DeviceParts#getMaker <em>Maker</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Maker</em>'.
	 * @see org.ferrule.model.DeviceParts#getMaker()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EAttribute getDeviceParts_Maker();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.DeviceParts#getModel <em>Model</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Model</em>'.
	 * @see org.ferrule.model.DeviceParts#getModel()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EAttribute getDeviceParts_Model();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.DeviceParts#getSize <em>Size</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Size</em>'.
	 * @see org.ferrule.model.DeviceParts#getSize()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EAttribute getDeviceParts_Size();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.DeviceParts#getEffectiveLength <em>Effective Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Effective Length</em>'.
	 * @see org.ferrule.model.DeviceParts#getEffectiveLength()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EAttribute getDeviceParts_EffectiveLength();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.DeviceParts#getTakesWire <em>Takes Wire</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Takes Wire</em>'.
	 * @see org.ferrule.model.DeviceParts#getTakesWire()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EAttribute getDeviceParts_TakesWire();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.DeviceParts#getSections <em>Sections</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Sections</em>'.
	 * @see org.ferrule.model.DeviceParts#getSections()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EReference getDeviceParts_Sections();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.DeviceParts#getLumens <em>Lumens</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Lumens</em>'.
	 * @see org.ferrule.model.DeviceParts#getLumens()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EReference getDeviceParts_Lumens();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.DeviceParts#getMarkers <em>Markers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Markers</em>'.
	 * @see org.ferrule.model.DeviceParts#getMarkers()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EReference getDeviceParts_Markers();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.DeviceParts#getBalloon <em>Balloon</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Balloon</em>'.
	 * @see org.ferrule.model.DeviceParts#getBalloon()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EReference getDeviceParts_Balloon();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.DeviceParts#getStent <em>Stent</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Stent</em>'.
	 * @see org.ferrule.model.DeviceParts#getStent()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EReference getDeviceParts_Stent();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.DeviceParts#getCutter <em>Cutter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Cutter</em>'.
	 * @see org.ferrule.model.DeviceParts#getCutter()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EReference getDeviceParts_Cutter();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.DeviceParts#getTransducer <em>Transducer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Transducer</em>'.
	 * @see org.ferrule.model.DeviceParts#getTransducer()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EReference getDeviceParts_Transducer();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.DeviceParts#getWire <em>Wire</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Wire</em>'.
	 * @see org.ferrule.model.DeviceParts#getWire()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EReference getDeviceParts_Wire();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.DeviceParts#getClaims <em>Claims</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Claims</em>'.
	 * @see org.ferrule.model.DeviceParts#getClaims()
	 * @see #getDeviceParts()
	 * @generated
	 */
	EReference getDeviceParts_Claims();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.DeviceLine <em>Device Line</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Device Line</em>'.
	 * @see org.ferrule.model.DeviceLine
	 * @generated
	 */
	EClass getDeviceLine();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Device <em>Device</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Device</em>'.
	 * @see org.ferrule.model.Device
	 * @generated
	 */
	EClass getDevice();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Device#getLine <em>Line</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Line</em>'.
	 * @see org.ferrule.model.Device#getLine()
	 * @see #getDevice()
	 * @generated
	 */
	EAttribute getDevice_Line();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.ShaftSection <em>Shaft Section</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Shaft Section</em>'.
	 * @see org.ferrule.model.ShaftSection
	 * @generated
	 */
	EClass getShaftSection();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ShaftSection#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.ferrule.model.ShaftSection#getName()
	 * @see #getShaftSection()
	 * @generated
	 */
	EAttribute getShaftSection_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ShaftSection#getFrom <em>From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>From</em>'.
	 * @see org.ferrule.model.ShaftSection#getFrom()
	 * @see #getShaftSection()
	 * @generated
	 */
	EAttribute getShaftSection_From();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ShaftSection#getTo <em>To</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>To</em>'.
	 * @see org.ferrule.model.ShaftSection#getTo()
	 * @see #getShaftSection()
	 * @generated
	 */
	EAttribute getShaftSection_To();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ShaftSection#getOd <em>Od</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Od</em>'.
	 * @see org.ferrule.model.ShaftSection#getOd()
	 * @see #getShaftSection()
	 * @generated
	 */
	EAttribute getShaftSection_Od();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ShaftSection#getOdProximal <em>Od Proximal</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Od Proximal</em>'.
	 * @see org.ferrule.model.ShaftSection#getOdProximal()
	 * @see #getShaftSection()
	 * @generated
	 */
	EAttribute getShaftSection_OdProximal();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ShaftSection#getOdAfter <em>Od After</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Od After</em>'.
	 * @see org.ferrule.model.ShaftSection#getOdAfter()
	 * @see #getShaftSection()
	 * @generated
	 */
	EAttribute getShaftSection_OdAfter();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ShaftSection#getOdAfterProximal <em>Od After Proximal</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Od After Proximal</em>'.
	 * @see org.ferrule.model.ShaftSection#getOdAfterProximal()
	 * @see #getShaftSection()
	 * @generated
	 */
	EAttribute getShaftSection_OdAfterProximal();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.ShaftSection#getOval <em>Oval</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Oval</em>'.
	 * @see org.ferrule.model.ShaftSection#getOval()
	 * @see #getShaftSection()
	 * @generated
	 */
	EReference getShaftSection_Oval();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.ShaftSection#getDiscs <em>Discs</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Discs</em>'.
	 * @see org.ferrule.model.ShaftSection#getDiscs()
	 * @see #getShaftSection()
	 * @generated
	 */
	EReference getShaftSection_Discs();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ShaftSection#isRigid <em>Rigid</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rigid</em>'.
	 * @see org.ferrule.model.ShaftSection#isRigid()
	 * @see #getShaftSection()
	 * @generated
	 */
	EAttribute getShaftSection_Rigid();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ShaftSection#getStiffness <em>Stiffness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stiffness</em>'.
	 * @see org.ferrule.model.ShaftSection#getStiffness()
	 * @see #getShaftSection()
	 * @generated
	 */
	EAttribute getShaftSection_Stiffness();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Oval <em>Oval</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Oval</em>'.
	 * @see org.ferrule.model.Oval
	 * @generated
	 */
	EClass getOval();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Oval#getWidth <em>Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width</em>'.
	 * @see org.ferrule.model.Oval#getWidth()
	 * @see #getOval()
	 * @generated
	 */
	EAttribute getOval_Width();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Oval#getHeight <em>Height</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Height</em>'.
	 * @see org.ferrule.model.Oval#getHeight()
	 * @see #getOval()
	 * @generated
	 */
	EAttribute getOval_Height();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Disc <em>Disc</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Disc</em>'.
	 * @see org.ferrule.model.Disc
	 * @generated
	 */
	EClass getDisc();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Disc#getX <em>X</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>X</em>'.
	 * @see org.ferrule.model.Disc#getX()
	 * @see #getDisc()
	 * @generated
	 */
	EAttribute getDisc_X();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Disc#getY <em>Y</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Y</em>'.
	 * @see org.ferrule.model.Disc#getY()
	 * @see #getDisc()
	 * @generated
	 */
	EAttribute getDisc_Y();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Disc#getDiameter <em>Diameter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Diameter</em>'.
	 * @see org.ferrule.model.Disc#getDiameter()
	 * @see #getDisc()
	 * @generated
	 */
	EAttribute getDisc_Diameter();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Lumen <em>Lumen</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Lumen</em>'.
	 * @see org.ferrule.model.Lumen
	 * @generated
	 */
	EClass getLumen();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Lumen#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.ferrule.model.Lumen#getName()
	 * @see #getLumen()
	 * @generated
	 */
	EAttribute getLumen_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Lumen#getUse <em>Use</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Use</em>'.
	 * @see org.ferrule.model.Lumen#getUse()
	 * @see #getLumen()
	 * @generated
	 */
	EAttribute getLumen_Use();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Lumen#getDistalAt <em>Distal At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Distal At</em>'.
	 * @see org.ferrule.model.Lumen#getDistalAt()
	 * @see #getLumen()
	 * @generated
	 */
	EAttribute getLumen_DistalAt();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Lumen#getProximalAt <em>Proximal At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Proximal At</em>'.
	 * @see org.ferrule.model.Lumen#getProximalAt()
	 * @see #getLumen()
	 * @generated
	 */
	EAttribute getLumen_ProximalAt();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Lumen#getOpens <em>Opens</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Opens</em>'.
	 * @see org.ferrule.model.Lumen#getOpens()
	 * @see #getLumen()
	 * @generated
	 */
	EAttribute getLumen_Opens();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.Lumen#getSections <em>Sections</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Sections</em>'.
	 * @see org.ferrule.model.Lumen#getSections()
	 * @see #getLumen()
	 * @generated
	 */
	EReference getLumen_Sections();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.LumenSection <em>Lumen Section</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Lumen Section</em>'.
	 * @see org.ferrule.model.LumenSection
	 * @generated
	 */
	EClass getLumenSection();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.LumenSection#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.ferrule.model.LumenSection#getName()
	 * @see #getLumenSection()
	 * @generated
	 */
	EAttribute getLumenSection_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.LumenSection#getFrom <em>From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>From</em>'.
	 * @see org.ferrule.model.LumenSection#getFrom()
	 * @see #getLumenSection()
	 * @generated
	 */
	EAttribute getLumenSection_From();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.LumenSection#getTo <em>To</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>To</em>'.
	 * @see org.ferrule.model.LumenSection#getTo()
	 * @see #getLumenSection()
	 * @generated
	 */
	EAttribute getLumenSection_To();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.LumenSection#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see org.ferrule.model.LumenSection#getId()
	 * @see #getLumenSection()
	 * @generated
	 */
	EAttribute getLumenSection_Id();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.LumenSection#getIdDistal <em>Id Distal</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id Distal</em>'.
	 * @see org.ferrule.model.LumenSection#getIdDistal()
	 * @see #getLumenSection()
	 * @generated
	 */
	EAttribute getLumenSection_IdDistal();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Marker <em>Marker</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Marker</em>'.
	 * @see org.ferrule.model.Marker
	 * @generated
	 */
	EClass getMarker();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Marker#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see org.ferrule.model.Marker#getAt()
	 * @see #getMarker()
	 * @generated
	 */
	EAttribute getMarker_At();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Marker#getWidth <em>Width</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Width</em>'.
	 * @see org.ferrule.model.Marker#getWidth()
	 * @see #getMarker()
	 * @generated
	 */
	EAttribute getMarker_Width();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Balloon <em>Balloon</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Balloon</em>'.
	 * @see org.ferrule.model.Balloon
	 * @generated
	 */
	EClass getBalloon();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Balloon#getSection <em>Section</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Section</em>'.
	 * @see org.ferrule.model.Balloon#getSection()
	 * @see #getBalloon()
	 * @generated
	 */
	EAttribute getBalloon_Section();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Balloon#getDiameter <em>Diameter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Diameter</em>'.
	 * @see org.ferrule.model.Balloon#getDiameter()
	 * @see #getBalloon()
	 * @generated
	 */
	EAttribute getBalloon_Diameter();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Balloon#getLength <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Length</em>'.
	 * @see org.ferrule.model.Balloon#getLength()
	 * @see #getBalloon()
	 * @generated
	 */
	EAttribute getBalloon_Length();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Balloon#getNominalPressure <em>Nominal Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Nominal Pressure</em>'.
	 * @see org.ferrule.model.Balloon#getNominalPressure()
	 * @see #getBalloon()
	 * @generated
	 */
	EAttribute getBalloon_NominalPressure();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Balloon#getRatedBurstPressure <em>Rated Burst Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rated Burst Pressure</em>'.
	 * @see org.ferrule.model.Balloon#getRatedBurstPressure()
	 * @see #getBalloon()
	 * @generated
	 */
	EAttribute getBalloon_RatedBurstPressure();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.Balloon#getCompliance <em>Compliance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Compliance</em>'.
	 * @see org.ferrule.model.Balloon#getCompliance()
	 * @see #getBalloon()
	 * @generated
	 */
	EReference getBalloon_Compliance();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.ComplianceRow <em>Compliance Row</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Compliance Row</em>'.
	 * @see org.ferrule.model.ComplianceRow
	 * @generated
	 */
	EClass getComplianceRow();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ComplianceRow#getPressure <em>Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Pressure</em>'.
	 * @see org.ferrule.model.ComplianceRow#getPressure()
	 * @see #getComplianceRow()
	 * @generated
	 */
	EAttribute getComplianceRow_Pressure();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ComplianceRow#getDiameter <em>Diameter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Diameter</em>'.
	 * @see org.ferrule.model.ComplianceRow#getDiameter()
	 * @see #getComplianceRow()
	 * @generated
	 */
	EAttribute getComplianceRow_Diameter();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Stent <em>Stent</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Stent</em>'.
	 * @see org.ferrule.model.Stent
	 * @generated
	 */
	EClass getStent();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Stent#getSection <em>Section</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Section</em>'.
	 * @see org.ferrule.model.Stent#getSection()
	 * @see #getStent()
	 * @generated
	 */
	EAttribute getStent_Section();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Stent#getDiameter <em>Diameter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Diameter</em>'.
	 * @see org.ferrule.model.Stent#getDiameter()
	 * @see #getStent()
	 * @generated
	 */
	EAttribute getStent_Diameter();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Stent#getLength <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Length</em>'.
	 * @see org.ferrule.model.Stent#getLength()
	 * @see #getStent()
	 * @generated
	 */
	EAttribute getStent_Length();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Stent#getMaximumDiameter <em>Maximum Diameter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Maximum Diameter</em>'.
	 * @see org.ferrule.model.Stent#getMaximumDiameter()
	 * @see #getStent()
	 * @generated
	 */
	EAttribute getStent_MaximumDiameter();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Stent#getMaterial <em>Material</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Material</em>'.
	 * @see org.ferrule.model.Stent#getMaterial()
	 * @see #getStent()
	 * @generated
	 */
	EAttribute getStent_Material();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Stent#getStrutThickness <em>Strut Thickness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Strut Thickness</em>'.
	 * @see org.ferrule.model.Stent#getStrutThickness()
	 * @see #getStent()
	 * @generated
	 */
	EAttribute getStent_StrutThickness();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Cutter <em>Cutter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Cutter</em>'.
	 * @see org.ferrule.model.Cutter
	 * @generated
	 */
	EClass getCutter();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Cutter#getSection <em>Section</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Section</em>'.
	 * @see org.ferrule.model.Cutter#getSection()
	 * @see #getCutter()
	 * @generated
	 */
	EAttribute getCutter_Section();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Cutter#getType <em>Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Type</em>'.
	 * @see org.ferrule.model.Cutter#getType()
	 * @see #getCutter()
	 * @generated
	 */
	EAttribute getCutter_Type();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Cutter#getDiameter <em>Diameter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Diameter</em>'.
	 * @see org.ferrule.model.Cutter#getDiameter()
	 * @see #getCutter()
	 * @generated
	 */
	EAttribute getCutter_Diameter();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Transducer <em>Transducer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Transducer</em>'.
	 * @see org.ferrule.model.Transducer
	 * @generated
	 */
	EClass getTransducer();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Transducer#getType <em>Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Type</em>'.
	 * @see org.ferrule.model.Transducer#getType()
	 * @see #getTransducer()
	 * @generated
	 */
	EAttribute getTransducer_Type();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Transducer#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see org.ferrule.model.Transducer#getAt()
	 * @see #getTransducer()
	 * @generated
	 */
	EAttribute getTransducer_At();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.WireTraits <em>Wire Traits</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Wire Traits</em>'.
	 * @see org.ferrule.model.WireTraits
	 * @generated
	 */
	EClass getWireTraits();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.WireTraits#getTipLoad <em>Tip Load</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tip Load</em>'.
	 * @see org.ferrule.model.WireTraits#getTipLoad()
	 * @see #getWireTraits()
	 * @generated
	 */
	EAttribute getWireTraits_TipLoad();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.WireTraits#getTipShape <em>Tip Shape</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tip Shape</em>'.
	 * @see org.ferrule.model.WireTraits#getTipShape()
	 * @see #getWireTraits()
	 * @generated
	 */
	EAttribute getWireTraits_TipShape();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.WireTraits#isExtendable <em>Extendable</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Extendable</em>'.
	 * @see org.ferrule.model.WireTraits#isExtendable()
	 * @see #getWireTraits()
	 * @generated
	 */
	EAttribute getWireTraits_Extendable();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.WireTraits#getCoating <em>Coating</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Coating</em>'.
	 * @see org.ferrule.model.WireTraits#getCoating()
	 * @see #getWireTraits()
	 * @generated
	 */
	EAttribute getWireTraits_Coating();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Claim <em>Claim</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Claim</em>'.
	 * @see org.ferrule.model.Claim
	 * @generated
	 */
	EClass getClaim();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Claim#getType <em>Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Type</em>'.
	 * @see org.ferrule.model.Claim#getType()
	 * @see #getClaim()
	 * @generated
	 */
	EAttribute getClaim_Type();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Claim#getValue <em>Value</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Value</em>'.
	 * @see org.ferrule.model.Claim#getValue()
	 * @see #getClaim()
	 * @generated
	 */
	EAttribute getClaim_Value();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.Claim#getKinds <em>Kinds</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Kinds</em>'.
	 * @see org.ferrule.model.Claim#getKinds()
	 * @see #getClaim()
	 * @generated
	 */
	EAttribute getClaim_Kinds();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.Claim#getSizes <em>Sizes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Sizes</em>'.
	 * @see org.ferrule.model.Claim#getSizes()
	 * @see #getClaim()
	 * @generated
	 */
	EAttribute getClaim_Sizes();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.Claim#getDevices <em>Devices</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Devices</em>'.
	 * @see org.ferrule.model.Claim#getDevices()
	 * @see #getClaim()
	 * @generated
	 */
	EAttribute getClaim_Devices();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Claim#getWire <em>Wire</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Wire</em>'.
	 * @see org.ferrule.model.Claim#getWire()
	 * @see #getClaim()
	 * @generated
	 */
	EAttribute getClaim_Wire();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Claim#isAlone <em>Alone</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Alone</em>'.
	 * @see org.ferrule.model.Claim#isAlone()
	 * @see #getClaim()
	 * @generated
	 */
	EAttribute getClaim_Alone();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.Claim#getCovers <em>Covers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Covers</em>'.
	 * @see org.ferrule.model.Claim#getCovers()
	 * @see #getClaim()
	 * @generated
	 */
	EAttribute getClaim_Covers();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.BenchResult <em>Bench Result</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Bench Result</em>'.
	 * @see org.ferrule.model.BenchResult
	 * @generated
	 */
	EClass getBenchResult();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.BenchResult#getOuter <em>Outer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Outer</em>'.
	 * @see org.ferrule.model.BenchResult#getOuter()
	 * @see #getBenchResult()
	 * @generated
	 */
	EAttribute getBenchResult_Outer();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.BenchResult#getLumen <em>Lumen</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lumen</em>'.
	 * @see org.ferrule.model.BenchResult#getLumen()
	 * @see #getBenchResult()
	 * @generated
	 */
	EAttribute getBenchResult_Lumen();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.BenchResult#getInner <em>Inner</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Inner</em>'.
	 * @see org.ferrule.model.BenchResult#getInner()
	 * @see #getBenchResult()
	 * @generated
	 */
	EAttribute getBenchResult_Inner();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.BenchResult#getWire <em>Wire</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Wire</em>'.
	 * @see org.ferrule.model.BenchResult#getWire()
	 * @see #getBenchResult()
	 * @generated
	 */
	EAttribute getBenchResult_Wire();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.BenchResult#getResult <em>Result</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Result</em>'.
	 * @see org.ferrule.model.BenchResult#getResult()
	 * @see #getBenchResult()
	 * @generated
	 */
	EAttribute getBenchResult_Result();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.BenchResult#getCovers <em>Covers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Covers</em>'.
	 * @see org.ferrule.model.BenchResult#getCovers()
	 * @see #getBenchResult()
	 * @generated
	 */
	EAttribute getBenchResult_Covers();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.BenchResult#getSamples <em>Samples</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Samples</em>'.
	 * @see org.ferrule.model.BenchResult#getSamples()
	 * @see #getBenchResult()
	 * @generated
	 */
	EAttribute getBenchResult_Samples();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.RuleSet <em>Rule Set</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Rule Set</em>'.
	 * @see org.ferrule.model.RuleSet
	 * @generated
	 */
	EClass getRuleSet();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.RuleSet#getSpans <em>Spans</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Spans</em>'.
	 * @see org.ferrule.model.RuleSet#getSpans()
	 * @see #getRuleSet()
	 * @generated
	 */
	EReference getRuleSet_Spans();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.RuleSet#getClearances <em>Clearances</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Clearances</em>'.
	 * @see org.ferrule.model.RuleSet#getClearances()
	 * @see #getRuleSet()
	 * @generated
	 */
	EReference getRuleSet_Clearances();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.RuleSet#getAfterUse <em>After Use</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>After Use</em>'.
	 * @see org.ferrule.model.RuleSet#getAfterUse()
	 * @see #getRuleSet()
	 * @generated
	 */
	EReference getRuleSet_AfterUse();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.RuleSet#getFlowLimits <em>Flow Limits</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Flow Limits</em>'.
	 * @see org.ferrule.model.RuleSet#getFlowLimits()
	 * @see #getRuleSet()
	 * @generated
	 */
	EReference getRuleSet_FlowLimits();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.RuleSet#getAllowances <em>Allowances</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Allowances</em>'.
	 * @see org.ferrule.model.RuleSet#getAllowances()
	 * @see #getRuleSet()
	 * @generated
	 */
	EReference getRuleSet_Allowances();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.RuleSet#getRatioBands <em>Ratio Bands</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Ratio Bands</em>'.
	 * @see org.ferrule.model.RuleSet#getRatioBands()
	 * @see #getRuleSet()
	 * @generated
	 */
	EReference getRuleSet_RatioBands();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.RuleSet#getChanceLimits <em>Chance Limits</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Chance Limits</em>'.
	 * @see org.ferrule.model.RuleSet#getChanceLimits()
	 * @see #getRuleSet()
	 * @generated
	 */
	EReference getRuleSet_ChanceLimits();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.RuleSet#getConfidence <em>Confidence</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Confidence</em>'.
	 * @see org.ferrule.model.RuleSet#getConfidence()
	 * @see #getRuleSet()
	 * @generated
	 */
	EAttribute getRuleSet_Confidence();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.RuleSet#getCoverage <em>Coverage</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Coverage</em>'.
	 * @see org.ferrule.model.RuleSet#getCoverage()
	 * @see #getRuleSet()
	 * @generated
	 */
	EAttribute getRuleSet_Coverage();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.RuleSet#getWireAhead <em>Wire Ahead</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Wire Ahead</em>'.
	 * @see org.ferrule.model.RuleSet#getWireAhead()
	 * @see #getRuleSet()
	 * @generated
	 */
	EAttribute getRuleSet_WireAhead();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Span <em>Span</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Span</em>'.
	 * @see org.ferrule.model.Span
	 * @generated
	 */
	EClass getSpan();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Span#getFigure <em>Figure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Figure</em>'.
	 * @see org.ferrule.model.Span#getFigure()
	 * @see #getSpan()
	 * @generated
	 */
	EAttribute getSpan_Figure();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.Span#getKinds <em>Kinds</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Kinds</em>'.
	 * @see org.ferrule.model.Span#getKinds()
	 * @see #getSpan()
	 * @generated
	 */
	EAttribute getSpan_Kinds();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Span#getBelow <em>Below</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Below</em>'.
	 * @see org.ferrule.model.Span#getBelow()
	 * @see #getSpan()
	 * @generated
	 */
	EAttribute getSpan_Below();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Span#getAbove <em>Above</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Above</em>'.
	 * @see org.ferrule.model.Span#getAbove()
	 * @see #getSpan()
	 * @generated
	 */
	EAttribute getSpan_Above();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Span#isRunsLow <em>Runs Low</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Runs Low</em>'.
	 * @see org.ferrule.model.Span#isRunsLow()
	 * @see #getSpan()
	 * @generated
	 */
	EAttribute getSpan_RunsLow();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.ClearanceRule <em>Clearance Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Clearance Rule</em>'.
	 * @see org.ferrule.model.ClearanceRule
	 * @generated
	 */
	EClass getClearanceRule();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.ClearanceRule#getOuter <em>Outer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Outer</em>'.
	 * @see org.ferrule.model.ClearanceRule#getOuter()
	 * @see #getClearanceRule()
	 * @generated
	 */
	EAttribute getClearanceRule_Outer();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.ClearanceRule#getInner <em>Inner</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Inner</em>'.
	 * @see org.ferrule.model.ClearanceRule#getInner()
	 * @see #getClearanceRule()
	 * @generated
	 */
	EAttribute getClearanceRule_Inner();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ClearanceRule#getRequired <em>Required</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Required</em>'.
	 * @see org.ferrule.model.ClearanceRule#getRequired()
	 * @see #getClearanceRule()
	 * @generated
	 */
	EAttribute getClearanceRule_Required();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.AfterUseRule <em>After Use Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>After Use Rule</em>'.
	 * @see org.ferrule.model.AfterUseRule
	 * @generated
	 */
	EClass getAfterUseRule();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.AfterUseRule#getKinds <em>Kinds</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Kinds</em>'.
	 * @see org.ferrule.model.AfterUseRule#getKinds()
	 * @see #getAfterUseRule()
	 * @generated
	 */
	EAttribute getAfterUseRule_Kinds();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.AfterUseRule#getGrowthLow <em>Growth Low</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Growth Low</em>'.
	 * @see org.ferrule.model.AfterUseRule#getGrowthLow()
	 * @see #getAfterUseRule()
	 * @generated
	 */
	EAttribute getAfterUseRule_GrowthLow();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.AfterUseRule#getGrowthCentre <em>Growth Centre</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Growth Centre</em>'.
	 * @see org.ferrule.model.AfterUseRule#getGrowthCentre()
	 * @see #getAfterUseRule()
	 * @generated
	 */
	EAttribute getAfterUseRule_GrowthCentre();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.AfterUseRule#getGrowthHigh <em>Growth High</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Growth High</em>'.
	 * @see org.ferrule.model.AfterUseRule#getGrowthHigh()
	 * @see #getAfterUseRule()
	 * @generated
	 */
	EAttribute getAfterUseRule_GrowthHigh();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.FlowLimit <em>Flow Limit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Flow Limit</em>'.
	 * @see org.ferrule.model.FlowLimit
	 * @generated
	 */
	EClass getFlowLimit();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.FlowLimit#getUse <em>Use</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Use</em>'.
	 * @see org.ferrule.model.FlowLimit#getUse()
	 * @see #getFlowLimit()
	 * @generated
	 */
	EAttribute getFlowLimit_Use();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.FlowLimit#getLeast <em>Least</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Least</em>'.
	 * @see org.ferrule.model.FlowLimit#getLeast()
	 * @see #getFlowLimit()
	 * @generated
	 */
	EAttribute getFlowLimit_Least();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Allowance <em>Allowance</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Allowance</em>'.
	 * @see org.ferrule.model.Allowance
	 * @generated
	 */
	EClass getAllowance();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Allowance#getPurpose <em>Purpose</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Purpose</em>'.
	 * @see org.ferrule.model.Allowance#getPurpose()
	 * @see #getAllowance()
	 * @generated
	 */
	EAttribute getAllowance_Purpose();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Allowance#getLength <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Length</em>'.
	 * @see org.ferrule.model.Allowance#getLength()
	 * @see #getAllowance()
	 * @generated
	 */
	EAttribute getAllowance_Length();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.RatioBand <em>Ratio Band</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Ratio Band</em>'.
	 * @see org.ferrule.model.RatioBand
	 * @generated
	 */
	EClass getRatioBand();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.RatioBand#getUse <em>Use</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Use</em>'.
	 * @see org.ferrule.model.RatioBand#getUse()
	 * @see #getRatioBand()
	 * @generated
	 */
	EAttribute getRatioBand_Use();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.RatioBand#getLow <em>Low</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Low</em>'.
	 * @see org.ferrule.model.RatioBand#getLow()
	 * @see #getRatioBand()
	 * @generated
	 */
	EAttribute getRatioBand_Low();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.RatioBand#getHigh <em>High</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>High</em>'.
	 * @see org.ferrule.model.RatioBand#getHigh()
	 * @see #getRatioBand()
	 * @generated
	 */
	EAttribute getRatioBand_High();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.RatioBand#getMeaning <em>Meaning</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Meaning</em>'.
	 * @see org.ferrule.model.RatioBand#getMeaning()
	 * @see #getRatioBand()
	 * @generated
	 */
	EAttribute getRatioBand_Meaning();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.ChanceLimit <em>Chance Limit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Chance Limit</em>'.
	 * @see org.ferrule.model.ChanceLimit
	 * @generated
	 */
	EClass getChanceLimit();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ChanceLimit#getGreatest <em>Greatest</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Greatest</em>'.
	 * @see org.ferrule.model.ChanceLimit#getGreatest()
	 * @see #getChanceLimit()
	 * @generated
	 */
	EAttribute getChanceLimit_Greatest();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.FitChart <em>Fit Chart</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Fit Chart</em>'.
	 * @see org.ferrule.model.FitChart
	 * @generated
	 */
	EClass getFitChart();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.FitChart#getAudience <em>Audience</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Audience</em>'.
	 * @see org.ferrule.model.FitChart#getAudience()
	 * @see #getFitChart()
	 * @generated
	 */
	EAttribute getFitChart_Audience();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.FitChart#getAuthor <em>Author</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Author</em>'.
	 * @see org.ferrule.model.FitChart#getAuthor()
	 * @see #getFitChart()
	 * @generated
	 */
	EAttribute getFitChart_Author();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.FitChart#getLibraries <em>Libraries</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Libraries</em>'.
	 * @see org.ferrule.model.FitChart#getLibraries()
	 * @see #getFitChart()
	 * @generated
	 */
	EAttribute getFitChart_Libraries();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.FitChart#getRules <em>Rules</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rules</em>'.
	 * @see org.ferrule.model.FitChart#getRules()
	 * @see #getFitChart()
	 * @generated
	 */
	EAttribute getFitChart_Rules();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.FitChart#getOuter <em>Outer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Outer</em>'.
	 * @see org.ferrule.model.FitChart#getOuter()
	 * @see #getFitChart()
	 * @generated
	 */
	EReference getFitChart_Outer();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.FitChart#getInner <em>Inner</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Inner</em>'.
	 * @see org.ferrule.model.FitChart#getInner()
	 * @see #getFitChart()
	 * @generated
	 */
	EReference getFitChart_Inner();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.FitChart#getConditions <em>Conditions</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Conditions</em>'.
	 * @see org.ferrule.model.FitChart#getConditions()
	 * @see #getFitChart()
	 * @generated
	 */
	EReference getFitChart_Conditions();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.FitChart#getPath <em>Path</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Path</em>'.
	 * @see org.ferrule.model.FitChart#getPath()
	 * @see #getFitChart()
	 * @generated
	 */
	EReference getFitChart_Path();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.FitChart#getLesion <em>Lesion</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Lesion</em>'.
	 * @see org.ferrule.model.FitChart#getLesion()
	 * @see #getFitChart()
	 * @generated
	 */
	EReference getFitChart_Lesion();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.FitChart#getPaper <em>Paper</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Paper</em>'.
	 * @see org.ferrule.model.FitChart#getPaper()
	 * @see #getFitChart()
	 * @generated
	 */
	EReference getFitChart_Paper();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.FitChart#getFootnotes <em>Footnotes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Footnotes</em>'.
	 * @see org.ferrule.model.FitChart#getFootnotes()
	 * @see #getFitChart()
	 * @generated
	 */
	EAttribute getFitChart_Footnotes();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.FitChart#getSignOff <em>Sign Off</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Sign Off</em>'.
	 * @see org.ferrule.model.FitChart#getSignOff()
	 * @see #getFitChart()
	 * @generated
	 */
	EReference getFitChart_SignOff();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.SignOff <em>Sign Off</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Sign Off</em>'.
	 * @see org.ferrule.model.SignOff
	 * @generated
	 */
	EClass getSignOff();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.SignOff#getBy <em>By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>By</em>'.
	 * @see org.ferrule.model.SignOff#getBy()
	 * @see #getSignOff()
	 * @generated
	 */
	EAttribute getSignOff_By();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.SignOff#getDate <em>Date</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Date</em>'.
	 * @see org.ferrule.model.SignOff#getDate()
	 * @see #getSignOff()
	 * @generated
	 */
	EAttribute getSignOff_Date();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.SignOff#getRuleSet <em>Rule Set</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rule Set</em>'.
	 * @see org.ferrule.model.SignOff#getRuleSet()
	 * @see #getSignOff()
	 * @generated
	 */
	EAttribute getSignOff_RuleSet();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.SignOff#getAsked <em>Asked</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Asked</em>'.
	 * @see org.ferrule.model.SignOff#getAsked()
	 * @see #getSignOff()
	 * @generated
	 */
	EAttribute getSignOff_Asked();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.SignOff#getDocuments <em>Documents</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Documents</em>'.
	 * @see org.ferrule.model.SignOff#getDocuments()
	 * @see #getSignOff()
	 * @generated
	 */
	EReference getSignOff_Documents();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.SignOff#getInner <em>Inner</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Inner</em>'.
	 * @see org.ferrule.model.SignOff#getInner()
	 * @see #getSignOff()
	 * @generated
	 */
	EAttribute getSignOff_Inner();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.SignOff#getRows <em>Rows</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Rows</em>'.
	 * @see org.ferrule.model.SignOff#getRows()
	 * @see #getSignOff()
	 * @generated
	 */
	EReference getSignOff_Rows();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.SignedRow <em>Signed Row</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Signed Row</em>'.
	 * @see org.ferrule.model.SignedRow
	 * @generated
	 */
	EClass getSignedRow();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.SignedRow#getOuter <em>Outer</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Outer</em>'.
	 * @see org.ferrule.model.SignedRow#getOuter()
	 * @see #getSignedRow()
	 * @generated
	 */
	EAttribute getSignedRow_Outer();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.SignedRow#getIn <em>In</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>In</em>'.
	 * @see org.ferrule.model.SignedRow#getIn()
	 * @see #getSignedRow()
	 * @generated
	 */
	EAttribute getSignedRow_In();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.SignedRow#getOut <em>Out</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Out</em>'.
	 * @see org.ferrule.model.SignedRow#getOut()
	 * @see #getSignedRow()
	 * @generated
	 */
	EAttribute getSignedRow_Out();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Axis <em>Axis</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Axis</em>'.
	 * @see org.ferrule.model.Axis
	 * @generated
	 */
	EClass getAxis();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.Axis#getKinds <em>Kinds</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Kinds</em>'.
	 * @see org.ferrule.model.Axis#getKinds()
	 * @see #getAxis()
	 * @generated
	 */
	EAttribute getAxis_Kinds();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.Axis#getDevices <em>Devices</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Devices</em>'.
	 * @see org.ferrule.model.Axis#getDevices()
	 * @see #getAxis()
	 * @generated
	 */
	EAttribute getAxis_Devices();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.Axis#getHidden <em>Hidden</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Hidden</em>'.
	 * @see org.ferrule.model.Axis#getHidden()
	 * @see #getAxis()
	 * @generated
	 */
	EAttribute getAxis_Hidden();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Axis#getGroupBy <em>Group By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Group By</em>'.
	 * @see org.ferrule.model.Axis#getGroupBy()
	 * @see #getAxis()
	 * @generated
	 */
	EAttribute getAxis_GroupBy();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Axis#getSortBy <em>Sort By</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sort By</em>'.
	 * @see org.ferrule.model.Axis#getSortBy()
	 * @see #getAxis()
	 * @generated
	 */
	EAttribute getAxis_SortBy();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Conditions <em>Conditions</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Conditions</em>'.
	 * @see org.ferrule.model.Conditions
	 * @generated
	 */
	EClass getConditions();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Conditions#getDirection <em>Direction</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Direction</em>'.
	 * @see org.ferrule.model.Conditions#getDirection()
	 * @see #getConditions()
	 * @generated
	 */
	EAttribute getConditions_Direction();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Conditions#getWire <em>Wire</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Wire</em>'.
	 * @see org.ferrule.model.Conditions#getWire()
	 * @see #getConditions()
	 * @generated
	 */
	EAttribute getConditions_Wire();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Conditions#getReach <em>Reach</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reach</em>'.
	 * @see org.ferrule.model.Conditions#getReach()
	 * @see #getConditions()
	 * @generated
	 */
	EAttribute getConditions_Reach();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.Conditions#getInside <em>Inside</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Inside</em>'.
	 * @see org.ferrule.model.Conditions#getInside()
	 * @see #getConditions()
	 * @generated
	 */
	EReference getConditions_Inside();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.Conditions#getThrough <em>Through</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Through</em>'.
	 * @see org.ferrule.model.Conditions#getThrough()
	 * @see #getConditions()
	 * @generated
	 */
	EReference getConditions_Through();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.Conditions#getBends <em>Bends</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Bends</em>'.
	 * @see org.ferrule.model.Conditions#getBends()
	 * @see #getConditions()
	 * @generated
	 */
	EReference getConditions_Bends();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Conditions#isAfterInflation <em>After Inflation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>After Inflation</em>'.
	 * @see org.ferrule.model.Conditions#isAfterInflation()
	 * @see #getConditions()
	 * @generated
	 */
	EAttribute getConditions_AfterInflation();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Occupant <em>Occupant</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Occupant</em>'.
	 * @see org.ferrule.model.Occupant
	 * @generated
	 */
	EClass getOccupant();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Occupant#getDevice <em>Device</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Device</em>'.
	 * @see org.ferrule.model.Occupant#getDevice()
	 * @see #getOccupant()
	 * @generated
	 */
	EAttribute getOccupant_Device();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Occupant#getWire <em>Wire</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Wire</em>'.
	 * @see org.ferrule.model.Occupant#getWire()
	 * @see #getOccupant()
	 * @generated
	 */
	EAttribute getOccupant_Wire();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Occupant#getTipAhead <em>Tip Ahead</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tip Ahead</em>'.
	 * @see org.ferrule.model.Occupant#getTipAhead()
	 * @see #getOccupant()
	 * @generated
	 */
	EAttribute getOccupant_TipAhead();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Occupant#isUsed <em>Used</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Used</em>'.
	 * @see org.ferrule.model.Occupant#isUsed()
	 * @see #getOccupant()
	 * @generated
	 */
	EAttribute getOccupant_Used();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.ThroughExtension <em>Through Extension</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Through Extension</em>'.
	 * @see org.ferrule.model.ThroughExtension
	 * @generated
	 */
	EClass getThroughExtension();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ThroughExtension#getExtension <em>Extension</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Extension</em>'.
	 * @see org.ferrule.model.ThroughExtension#getExtension()
	 * @see #getThroughExtension()
	 * @generated
	 */
	EAttribute getThroughExtension_Extension();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ThroughExtension#getProtrusion <em>Protrusion</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Protrusion</em>'.
	 * @see org.ferrule.model.ThroughExtension#getProtrusion()
	 * @see #getThroughExtension()
	 * @generated
	 */
	EAttribute getThroughExtension_Protrusion();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Bend <em>Bend</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Bend</em>'.
	 * @see org.ferrule.model.Bend
	 * @generated
	 */
	EClass getBend();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Bend#getWhere <em>Where</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Where</em>'.
	 * @see org.ferrule.model.Bend#getWhere()
	 * @see #getBend()
	 * @generated
	 */
	EAttribute getBend_Where();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Bend#getRadius <em>Radius</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Radius</em>'.
	 * @see org.ferrule.model.Bend#getRadius()
	 * @see #getBend()
	 * @generated
	 */
	EAttribute getBend_Radius();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Bend#getAngleDegrees <em>Angle Degrees</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Angle Degrees</em>'.
	 * @see org.ferrule.model.Bend#getAngleDegrees()
	 * @see #getBend()
	 * @generated
	 */
	EAttribute getBend_AngleDegrees();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Bend#getVesselDiameter <em>Vessel Diameter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Vessel Diameter</em>'.
	 * @see org.ferrule.model.Bend#getVesselDiameter()
	 * @see #getBend()
	 * @generated
	 */
	EAttribute getBend_VesselDiameter();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.VesselPath <em>Vessel Path</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Vessel Path</em>'.
	 * @see org.ferrule.model.VesselPath
	 * @generated
	 */
	EClass getVesselPath();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.VesselPath#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.ferrule.model.VesselPath#getName()
	 * @see #getVesselPath()
	 * @generated
	 */
	EAttribute getVesselPath_Name();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.VesselPath#getSegments <em>Segments</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Segments</em>'.
	 * @see org.ferrule.model.VesselPath#getSegments()
	 * @see #getVesselPath()
	 * @generated
	 */
	EReference getVesselPath_Segments();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.VesselSegment <em>Vessel Segment</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Vessel Segment</em>'.
	 * @see org.ferrule.model.VesselSegment
	 * @generated
	 */
	EClass getVesselSegment();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.VesselSegment#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.ferrule.model.VesselSegment#getName()
	 * @see #getVesselSegment()
	 * @generated
	 */
	EAttribute getVesselSegment_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.VesselSegment#getLength <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Length</em>'.
	 * @see org.ferrule.model.VesselSegment#getLength()
	 * @see #getVesselSegment()
	 * @generated
	 */
	EAttribute getVesselSegment_Length();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.VesselSegment#getDiameter <em>Diameter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Diameter</em>'.
	 * @see org.ferrule.model.VesselSegment#getDiameter()
	 * @see #getVesselSegment()
	 * @generated
	 */
	EAttribute getVesselSegment_Diameter();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.VesselSegment#getBendRadius <em>Bend Radius</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bend Radius</em>'.
	 * @see org.ferrule.model.VesselSegment#getBendRadius()
	 * @see #getVesselSegment()
	 * @generated
	 */
	EAttribute getVesselSegment_BendRadius();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.VesselSegment#getBendAngleDegrees <em>Bend Angle Degrees</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bend Angle Degrees</em>'.
	 * @see org.ferrule.model.VesselSegment#getBendAngleDegrees()
	 * @see #getVesselSegment()
	 * @generated
	 */
	EAttribute getVesselSegment_BendAngleDegrees();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Lesion <em>Lesion</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Lesion</em>'.
	 * @see org.ferrule.model.Lesion
	 * @generated
	 */
	EClass getLesion();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Lesion#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.ferrule.model.Lesion#getName()
	 * @see #getLesion()
	 * @generated
	 */
	EAttribute getLesion_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Lesion#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see org.ferrule.model.Lesion#getAt()
	 * @see #getLesion()
	 * @generated
	 */
	EAttribute getLesion_At();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Lesion#getLength <em>Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Length</em>'.
	 * @see org.ferrule.model.Lesion#getLength()
	 * @see #getLesion()
	 * @generated
	 */
	EAttribute getLesion_Length();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Lesion#getDiameter <em>Diameter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Diameter</em>'.
	 * @see org.ferrule.model.Lesion#getDiameter()
	 * @see #getLesion()
	 * @generated
	 */
	EAttribute getLesion_Diameter();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Lesion#getReference <em>Reference</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Reference</em>'.
	 * @see org.ferrule.model.Lesion#getReference()
	 * @see #getLesion()
	 * @generated
	 */
	EAttribute getLesion_Reference();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Paper <em>Paper</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Paper</em>'.
	 * @see org.ferrule.model.Paper
	 * @generated
	 */
	EClass getPaper();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Paper#getSize <em>Size</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Size</em>'.
	 * @see org.ferrule.model.Paper#getSize()
	 * @see #getPaper()
	 * @generated
	 */
	EAttribute getPaper_Size();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Paper#getOrientation <em>Orientation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Orientation</em>'.
	 * @see org.ferrule.model.Paper#getOrientation()
	 * @see #getPaper()
	 * @generated
	 */
	EAttribute getPaper_Orientation();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Paper#getPrimaryUnit <em>Primary Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Primary Unit</em>'.
	 * @see org.ferrule.model.Paper#getPrimaryUnit()
	 * @see #getPaper()
	 * @generated
	 */
	EAttribute getPaper_PrimaryUnit();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Paper#getShowNumbers <em>Show Numbers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Show Numbers</em>'.
	 * @see org.ferrule.model.Paper#getShowNumbers()
	 * @see #getPaper()
	 * @generated
	 */
	EAttribute getPaper_ShowNumbers();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.TechniqueLibrary <em>Technique Library</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Technique Library</em>'.
	 * @see org.ferrule.model.TechniqueLibrary
	 * @generated
	 */
	EClass getTechniqueLibrary();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.TechniqueLibrary#getSituation <em>Situation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Situation</em>'.
	 * @see org.ferrule.model.TechniqueLibrary#getSituation()
	 * @see #getTechniqueLibrary()
	 * @generated
	 */
	EAttribute getTechniqueLibrary_Situation();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.TechniqueLibrary#getFacts <em>Facts</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Facts</em>'.
	 * @see org.ferrule.model.TechniqueLibrary#getFacts()
	 * @see #getTechniqueLibrary()
	 * @generated
	 */
	EReference getTechniqueLibrary_Facts();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.TechniqueLibrary#getSetups <em>Setups</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Setups</em>'.
	 * @see org.ferrule.model.TechniqueLibrary#getSetups()
	 * @see #getTechniqueLibrary()
	 * @generated
	 */
	EReference getTechniqueLibrary_Setups();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.TechniqueLibrary#getTechniques <em>Techniques</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Techniques</em>'.
	 * @see org.ferrule.model.TechniqueLibrary#getTechniques()
	 * @see #getTechniqueLibrary()
	 * @generated
	 */
	EReference getTechniqueLibrary_Techniques();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.TechniqueLibrary#getBailOut <em>Bail Out</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Bail Out</em>'.
	 * @see org.ferrule.model.TechniqueLibrary#getBailOut()
	 * @see #getTechniqueLibrary()
	 * @generated
	 */
	EReference getTechniqueLibrary_BailOut();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.TechniqueLibrary#getStopRules <em>Stop Rules</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Stop Rules</em>'.
	 * @see org.ferrule.model.TechniqueLibrary#getStopRules()
	 * @see #getTechniqueLibrary()
	 * @generated
	 */
	EReference getTechniqueLibrary_StopRules();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Fact <em>Fact</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Fact</em>'.
	 * @see org.ferrule.model.Fact
	 * @generated
	 */
	EClass getFact();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Fact#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see org.ferrule.model.Fact#getId()
	 * @see #getFact()
	 * @generated
	 */
	EAttribute getFact_Id();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Fact#getWords <em>Words</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Words</em>'.
	 * @see org.ferrule.model.Fact#getWords()
	 * @see #getFact()
	 * @generated
	 */
	EAttribute getFact_Words();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Move <em>Move</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Move</em>'.
	 * @see org.ferrule.model.Move
	 * @generated
	 */
	EClass getMove();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Move#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see org.ferrule.model.Move#getId()
	 * @see #getMove()
	 * @generated
	 */
	EAttribute getMove_Id();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Move#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.ferrule.model.Move#getName()
	 * @see #getMove()
	 * @generated
	 */
	EAttribute getMove_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Move#getHazard <em>Hazard</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Hazard</em>'.
	 * @see org.ferrule.model.Move#getHazard()
	 * @see #getMove()
	 * @generated
	 */
	EAttribute getMove_Hazard();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.Move#getRoles <em>Roles</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Roles</em>'.
	 * @see org.ferrule.model.Move#getRoles()
	 * @see #getMove()
	 * @generated
	 */
	EReference getMove_Roles();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.Move#getNeeds <em>Needs</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Needs</em>'.
	 * @see org.ferrule.model.Move#getNeeds()
	 * @see #getMove()
	 * @generated
	 */
	EReference getMove_Needs();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.Move#getSetups <em>Setups</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Setups</em>'.
	 * @see org.ferrule.model.Move#getSetups()
	 * @see #getMove()
	 * @generated
	 */
	EAttribute getMove_Setups();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Costed <em>Costed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Costed</em>'.
	 * @see org.ferrule.model.Costed
	 * @generated
	 */
	EClass getCosted();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Costed#getMinutes <em>Minutes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Minutes</em>'.
	 * @see org.ferrule.model.Costed#getMinutes()
	 * @see #getCosted()
	 * @generated
	 */
	EAttribute getCosted_Minutes();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Costed#getContrastMl <em>Contrast Ml</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Contrast Ml</em>'.
	 * @see org.ferrule.model.Costed#getContrastMl()
	 * @see #getCosted()
	 * @generated
	 */
	EAttribute getCosted_ContrastMl();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Costed#getDoseMgy <em>Dose Mgy</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Dose Mgy</em>'.
	 * @see org.ferrule.model.Costed#getDoseMgy()
	 * @see #getCosted()
	 * @generated
	 */
	EAttribute getCosted_DoseMgy();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Costed#getMoney <em>Money</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Money</em>'.
	 * @see org.ferrule.model.Costed#getMoney()
	 * @see #getCosted()
	 * @generated
	 */
	EAttribute getCosted_Money();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Advised <em>Advised</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Advised</em>'.
	 * @see org.ferrule.model.Advised
	 * @generated
	 */
	EClass getAdvised();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.Advised#getChanges <em>Changes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Changes</em>'.
	 * @see org.ferrule.model.Advised#getChanges()
	 * @see #getAdvised()
	 * @generated
	 */
	EAttribute getAdvised_Changes();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.Advised#getCautions <em>Cautions</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Cautions</em>'.
	 * @see org.ferrule.model.Advised#getCautions()
	 * @see #getAdvised()
	 * @generated
	 */
	EAttribute getAdvised_Cautions();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Advised#getOffLabel <em>Off Label</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Off Label</em>'.
	 * @see org.ferrule.model.Advised#getOffLabel()
	 * @see #getAdvised()
	 * @generated
	 */
	EAttribute getAdvised_OffLabel();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Advised#getStop <em>Stop</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stop</em>'.
	 * @see org.ferrule.model.Advised#getStop()
	 * @see #getAdvised()
	 * @generated
	 */
	EAttribute getAdvised_Stop();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.Advised#getPublished <em>Published</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Published</em>'.
	 * @see org.ferrule.model.Advised#getPublished()
	 * @see #getAdvised()
	 * @generated
	 */
	EReference getAdvised_Published();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Setup <em>Setup</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Setup</em>'.
	 * @see org.ferrule.model.Setup
	 * @generated
	 */
	EClass getSetup();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.Setup#getLeaves <em>Leaves</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Leaves</em>'.
	 * @see org.ferrule.model.Setup#getLeaves()
	 * @see #getSetup()
	 * @generated
	 */
	EReference getSetup_Leaves();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Setup#isExchangesWire <em>Exchanges Wire</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Exchanges Wire</em>'.
	 * @see org.ferrule.model.Setup#isExchangesWire()
	 * @see #getSetup()
	 * @generated
	 */
	EAttribute getSetup_ExchangesWire();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Technique <em>Technique</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Technique</em>'.
	 * @see org.ferrule.model.Technique
	 * @generated
	 */
	EClass getTechnique();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Technique#getAxis <em>Axis</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Axis</em>'.
	 * @see org.ferrule.model.Technique#getAxis()
	 * @see #getTechnique()
	 * @generated
	 */
	EAttribute getTechnique_Axis();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.Technique#getAfter <em>After</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>After</em>'.
	 * @see org.ferrule.model.Technique#getAfter()
	 * @see #getTechnique()
	 * @generated
	 */
	EAttribute getTechnique_After();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.Technique#getTries <em>Tries</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Tries</em>'.
	 * @see org.ferrule.model.Technique#getTries()
	 * @see #getTechnique()
	 * @generated
	 */
	EReference getTechnique_Tries();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Role <em>Role</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Role</em>'.
	 * @see org.ferrule.model.Role
	 * @generated
	 */
	EClass getRole();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Role#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see org.ferrule.model.Role#getId()
	 * @see #getRole()
	 * @generated
	 */
	EAttribute getRole_Id();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Role#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.ferrule.model.Role#getName()
	 * @see #getRole()
	 * @generated
	 */
	EAttribute getRole_Name();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.Role#getKinds <em>Kinds</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Kinds</em>'.
	 * @see org.ferrule.model.Role#getKinds()
	 * @see #getRole()
	 * @generated
	 */
	EAttribute getRole_Kinds();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.Role#getDevices <em>Devices</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Devices</em>'.
	 * @see org.ferrule.model.Role#getDevices()
	 * @see #getRole()
	 * @generated
	 */
	EAttribute getRole_Devices();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Role#getEquipment <em>Equipment</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Equipment</em>'.
	 * @see org.ferrule.model.Role#getEquipment()
	 * @see #getRole()
	 * @generated
	 */
	EAttribute getRole_Equipment();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Role#getNominalDiameter <em>Nominal Diameter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Nominal Diameter</em>'.
	 * @see org.ferrule.model.Role#getNominalDiameter()
	 * @see #getRole()
	 * @generated
	 */
	EAttribute getRole_NominalDiameter();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Role#getNominalLength <em>Nominal Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Nominal Length</em>'.
	 * @see org.ferrule.model.Role#getNominalLength()
	 * @see #getRole()
	 * @generated
	 */
	EAttribute getRole_NominalLength();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Role#getWire <em>Wire</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Wire</em>'.
	 * @see org.ferrule.model.Role#getWire()
	 * @see #getRole()
	 * @generated
	 */
	EAttribute getRole_Wire();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Role#getToVesselFrom <em>To Vessel From</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>To Vessel From</em>'.
	 * @see org.ferrule.model.Role#getToVesselFrom()
	 * @see #getRole()
	 * @generated
	 */
	EAttribute getRole_ToVesselFrom();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Role#getToVesselTo <em>To Vessel To</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>To Vessel To</em>'.
	 * @see org.ferrule.model.Role#getToVesselTo()
	 * @see #getRole()
	 * @generated
	 */
	EAttribute getRole_ToVesselTo();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Role#getTask <em>Task</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Task</em>'.
	 * @see org.ferrule.model.Role#getTask()
	 * @see #getRole()
	 * @generated
	 */
	EAttribute getRole_Task();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Role#getCarrier <em>Carrier</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Carrier</em>'.
	 * @see org.ferrule.model.Role#getCarrier()
	 * @see #getRole()
	 * @generated
	 */
	EAttribute getRole_Carrier();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Role#getGoal <em>Goal</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Goal</em>'.
	 * @see org.ferrule.model.Role#getGoal()
	 * @see #getRole()
	 * @generated
	 */
	EAttribute getRole_Goal();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Role#getCount <em>Count</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Count</em>'.
	 * @see org.ferrule.model.Role#getCount()
	 * @see #getRole()
	 * @generated
	 */
	EAttribute getRole_Count();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Role#isOnlyIfWireIsShort <em>Only If Wire Is Short</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Only If Wire Is Short</em>'.
	 * @see org.ferrule.model.Role#isOnlyIfWireIsShort()
	 * @see #getRole()
	 * @generated
	 */
	EAttribute getRole_OnlyIfWireIsShort();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Need <em>Need</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Need</em>'.
	 * @see org.ferrule.model.Need
	 * @generated
	 */
	EClass getNeed();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Need#getFact <em>Fact</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fact</em>'.
	 * @see org.ferrule.model.Need#getFact()
	 * @see #getNeed()
	 * @generated
	 */
	EAttribute getNeed_Fact();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Need#getVessel <em>Vessel</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Vessel</em>'.
	 * @see org.ferrule.model.Need#getVessel()
	 * @see #getNeed()
	 * @generated
	 */
	EAttribute getNeed_Vessel();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Need#getBranch <em>Branch</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Branch</em>'.
	 * @see org.ferrule.model.Need#getBranch()
	 * @see #getNeed()
	 * @generated
	 */
	EAttribute getNeed_Branch();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Placement <em>Placement</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Placement</em>'.
	 * @see org.ferrule.model.Placement
	 * @generated
	 */
	EClass getPlacement();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Placement#getSlot <em>Slot</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Slot</em>'.
	 * @see org.ferrule.model.Placement#getSlot()
	 * @see #getPlacement()
	 * @generated
	 */
	EAttribute getPlacement_Slot();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Placement#getRole <em>Role</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Role</em>'.
	 * @see org.ferrule.model.Placement#getRole()
	 * @see #getPlacement()
	 * @generated
	 */
	EAttribute getPlacement_Role();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Placement#getProtrusion <em>Protrusion</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Protrusion</em>'.
	 * @see org.ferrule.model.Placement#getProtrusion()
	 * @see #getPlacement()
	 * @generated
	 */
	EAttribute getPlacement_Protrusion();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.PlannedTry <em>Planned Try</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Planned Try</em>'.
	 * @see org.ferrule.model.PlannedTry
	 * @generated
	 */
	EClass getPlannedTry();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.PlannedTry#getSuccesses <em>Successes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Successes</em>'.
	 * @see org.ferrule.model.PlannedTry#getSuccesses()
	 * @see #getPlannedTry()
	 * @generated
	 */
	EAttribute getPlannedTry_Successes();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.PlannedTry#getFailures <em>Failures</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Failures</em>'.
	 * @see org.ferrule.model.PlannedTry#getFailures()
	 * @see #getPlannedTry()
	 * @generated
	 */
	EAttribute getPlannedTry_Failures();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.PlannedTry#getPrior <em>Prior</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Prior</em>'.
	 * @see org.ferrule.model.PlannedTry#getPrior()
	 * @see #getPlannedTry()
	 * @generated
	 */
	EReference getPlannedTry_Prior();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Prior <em>Prior</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Prior</em>'.
	 * @see org.ferrule.model.Prior
	 * @generated
	 */
	EClass getPrior();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Prior#getSuccesses <em>Successes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Successes</em>'.
	 * @see org.ferrule.model.Prior#getSuccesses()
	 * @see #getPrior()
	 * @generated
	 */
	EAttribute getPrior_Successes();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Prior#getFailures <em>Failures</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Failures</em>'.
	 * @see org.ferrule.model.Prior#getFailures()
	 * @see #getPrior()
	 * @generated
	 */
	EAttribute getPrior_Failures();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Prior#getLabel <em>Label</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Label</em>'.
	 * @see org.ferrule.model.Prior#getLabel()
	 * @see #getPrior()
	 * @generated
	 */
	EAttribute getPrior_Label();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Published <em>Published</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Published</em>'.
	 * @see org.ferrule.model.Published
	 * @generated
	 */
	EClass getPublished();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Published#getText <em>Text</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Text</em>'.
	 * @see org.ferrule.model.Published#getText()
	 * @see #getPublished()
	 * @generated
	 */
	EAttribute getPublished_Text();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.StopRule <em>Stop Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Stop Rule</em>'.
	 * @see org.ferrule.model.StopRule
	 * @generated
	 */
	EClass getStopRule();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.StopRule#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see org.ferrule.model.StopRule#getId()
	 * @see #getStopRule()
	 * @generated
	 */
	EAttribute getStopRule_Id();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.StopRule#getWords <em>Words</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Words</em>'.
	 * @see org.ferrule.model.StopRule#getWords()
	 * @see #getStopRule()
	 * @generated
	 */
	EAttribute getStopRule_Words();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.StopRule#getResource <em>Resource</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Resource</em>'.
	 * @see org.ferrule.model.StopRule#getResource()
	 * @see #getStopRule()
	 * @generated
	 */
	EAttribute getStopRule_Resource();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.StopRule#getLimit <em>Limit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Limit</em>'.
	 * @see org.ferrule.model.StopRule#getLimit()
	 * @see #getStopRule()
	 * @generated
	 */
	EAttribute getStopRule_Limit();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.CaseDocument <em>Case Document</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Case Document</em>'.
	 * @see org.ferrule.model.CaseDocument
	 * @generated
	 */
	EClass getCaseDocument();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.CaseDocument#getLibraries <em>Libraries</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Libraries</em>'.
	 * @see org.ferrule.model.CaseDocument#getLibraries()
	 * @see #getCaseDocument()
	 * @generated
	 */
	EAttribute getCaseDocument_Libraries();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.CaseDocument#getRules <em>Rules</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Rules</em>'.
	 * @see org.ferrule.model.CaseDocument#getRules()
	 * @see #getCaseDocument()
	 * @generated
	 */
	EAttribute getCaseDocument_Rules();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.CaseDocument#getTechniques <em>Techniques</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Techniques</em>'.
	 * @see org.ferrule.model.CaseDocument#getTechniques()
	 * @see #getCaseDocument()
	 * @generated
	 */
	EAttribute getCaseDocument_Techniques();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.CaseDocument#getShelf <em>Shelf</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Shelf</em>'.
	 * @see org.ferrule.model.CaseDocument#getShelf()
	 * @see #getCaseDocument()
	 * @generated
	 */
	EAttribute getCaseDocument_Shelf();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.CaseDocument#getDay <em>Day</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Day</em>'.
	 * @see org.ferrule.model.CaseDocument#getDay()
	 * @see #getCaseDocument()
	 * @generated
	 */
	EAttribute getCaseDocument_Day();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.CaseDocument#getAccess <em>Access</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Access</em>'.
	 * @see org.ferrule.model.CaseDocument#getAccess()
	 * @see #getCaseDocument()
	 * @generated
	 */
	EReference getCaseDocument_Access();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.CaseDocument#getSystem <em>System</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>System</em>'.
	 * @see org.ferrule.model.CaseDocument#getSystem()
	 * @see #getCaseDocument()
	 * @generated
	 */
	EReference getCaseDocument_System();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.CaseDocument#getPath <em>Path</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Path</em>'.
	 * @see org.ferrule.model.CaseDocument#getPath()
	 * @see #getCaseDocument()
	 * @generated
	 */
	EReference getCaseDocument_Path();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.CaseDocument#getLesion <em>Lesion</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Lesion</em>'.
	 * @see org.ferrule.model.CaseDocument#getLesion()
	 * @see #getCaseDocument()
	 * @generated
	 */
	EReference getCaseDocument_Lesion();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.CaseDocument#getBranch <em>Branch</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Branch</em>'.
	 * @see org.ferrule.model.CaseDocument#getBranch()
	 * @see #getCaseDocument()
	 * @generated
	 */
	EReference getCaseDocument_Branch();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.CaseDocument#getDeliver <em>Deliver</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Deliver</em>'.
	 * @see org.ferrule.model.CaseDocument#getDeliver()
	 * @see #getCaseDocument()
	 * @generated
	 */
	EAttribute getCaseDocument_Deliver();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.CaseDocument#getFacts <em>Facts</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Facts</em>'.
	 * @see org.ferrule.model.CaseDocument#getFacts()
	 * @see #getCaseDocument()
	 * @generated
	 */
	EReference getCaseDocument_Facts();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.CaseDocument#getMeasures <em>Measures</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Measures</em>'.
	 * @see org.ferrule.model.CaseDocument#getMeasures()
	 * @see #getCaseDocument()
	 * @generated
	 */
	EReference getCaseDocument_Measures();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.CaseDocument#getPatient <em>Patient</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Patient</em>'.
	 * @see org.ferrule.model.CaseDocument#getPatient()
	 * @see #getCaseDocument()
	 * @generated
	 */
	EReference getCaseDocument_Patient();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.CaseDocument#getAim <em>Aim</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Aim</em>'.
	 * @see org.ferrule.model.CaseDocument#getAim()
	 * @see #getCaseDocument()
	 * @generated
	 */
	EReference getCaseDocument_Aim();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.CaseDocument#getSpent <em>Spent</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Spent</em>'.
	 * @see org.ferrule.model.CaseDocument#getSpent()
	 * @see #getCaseDocument()
	 * @generated
	 */
	EReference getCaseDocument_Spent();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.CaseDocument#getLog <em>Log</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Log</em>'.
	 * @see org.ferrule.model.CaseDocument#getLog()
	 * @see #getCaseDocument()
	 * @generated
	 */
	EReference getCaseDocument_Log();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.CaseDocument#getClosing <em>Closing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Closing</em>'.
	 * @see org.ferrule.model.CaseDocument#getClosing()
	 * @see #getCaseDocument()
	 * @generated
	 */
	EReference getCaseDocument_Closing();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Access <em>Access</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Access</em>'.
	 * @see org.ferrule.model.Access
	 * @generated
	 */
	EClass getAccess();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Access#getSite <em>Site</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Site</em>'.
	 * @see org.ferrule.model.Access#getSite()
	 * @see #getAccess()
	 * @generated
	 */
	EAttribute getAccess_Site();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Access#getVessel <em>Vessel</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Vessel</em>'.
	 * @see org.ferrule.model.Access#getVessel()
	 * @see #getAccess()
	 * @generated
	 */
	EAttribute getAccess_Vessel();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.SystemInPlace <em>System In Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>System In Place</em>'.
	 * @see org.ferrule.model.SystemInPlace
	 * @generated
	 */
	EClass getSystemInPlace();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.SystemInPlace#getSheath <em>Sheath</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sheath</em>'.
	 * @see org.ferrule.model.SystemInPlace#getSheath()
	 * @see #getSystemInPlace()
	 * @generated
	 */
	EAttribute getSystemInPlace_Sheath();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.SystemInPlace#getValve <em>Valve</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Valve</em>'.
	 * @see org.ferrule.model.SystemInPlace#getValve()
	 * @see #getSystemInPlace()
	 * @generated
	 */
	EAttribute getSystemInPlace_Valve();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.SystemInPlace#getGuide <em>Guide</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Guide</em>'.
	 * @see org.ferrule.model.SystemInPlace#getGuide()
	 * @see #getSystemInPlace()
	 * @generated
	 */
	EAttribute getSystemInPlace_Guide();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.SystemInPlace#getExtension <em>Extension</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Extension</em>'.
	 * @see org.ferrule.model.SystemInPlace#getExtension()
	 * @see #getSystemInPlace()
	 * @generated
	 */
	EReference getSystemInPlace_Extension();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.SystemInPlace#getMicrocatheter <em>Microcatheter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Microcatheter</em>'.
	 * @see org.ferrule.model.SystemInPlace#getMicrocatheter()
	 * @see #getSystemInPlace()
	 * @generated
	 */
	EAttribute getSystemInPlace_Microcatheter();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.SystemInPlace#getMainWire <em>Main Wire</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Main Wire</em>'.
	 * @see org.ferrule.model.SystemInPlace#getMainWire()
	 * @see #getSystemInPlace()
	 * @generated
	 */
	EAttribute getSystemInPlace_MainWire();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.SystemInPlace#getSecondWire <em>Second Wire</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Second Wire</em>'.
	 * @see org.ferrule.model.SystemInPlace#getSecondWire()
	 * @see #getSystemInPlace()
	 * @generated
	 */
	EAttribute getSystemInPlace_SecondWire();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.SystemInPlace#getAnchor <em>Anchor</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Anchor</em>'.
	 * @see org.ferrule.model.SystemInPlace#getAnchor()
	 * @see #getSystemInPlace()
	 * @generated
	 */
	EAttribute getSystemInPlace_Anchor();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.SideBranch <em>Side Branch</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Side Branch</em>'.
	 * @see org.ferrule.model.SideBranch
	 * @generated
	 */
	EClass getSideBranch();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.SideBranch#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.ferrule.model.SideBranch#getName()
	 * @see #getSideBranch()
	 * @generated
	 */
	EAttribute getSideBranch_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.SideBranch#getAt <em>At</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>At</em>'.
	 * @see org.ferrule.model.SideBranch#getAt()
	 * @see #getSideBranch()
	 * @generated
	 */
	EAttribute getSideBranch_At();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.SideBranch#getDiameter <em>Diameter</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Diameter</em>'.
	 * @see org.ferrule.model.SideBranch#getDiameter()
	 * @see #getSideBranch()
	 * @generated
	 */
	EAttribute getSideBranch_Diameter();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.SideBranch#getDepth <em>Depth</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Depth</em>'.
	 * @see org.ferrule.model.SideBranch#getDepth()
	 * @see #getSideBranch()
	 * @generated
	 */
	EAttribute getSideBranch_Depth();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.StatedFact <em>Stated Fact</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Stated Fact</em>'.
	 * @see org.ferrule.model.StatedFact
	 * @generated
	 */
	EClass getStatedFact();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.StatedFact#getFact <em>Fact</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Fact</em>'.
	 * @see org.ferrule.model.StatedFact#getFact()
	 * @see #getStatedFact()
	 * @generated
	 */
	EAttribute getStatedFact_Fact();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.StatedFact#isHolds <em>Holds</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Holds</em>'.
	 * @see org.ferrule.model.StatedFact#isHolds()
	 * @see #getStatedFact()
	 * @generated
	 */
	EAttribute getStatedFact_Holds();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.LesionMeasures <em>Lesion Measures</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Lesion Measures</em>'.
	 * @see org.ferrule.model.LesionMeasures
	 * @generated
	 */
	EClass getLesionMeasures();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.LesionMeasures#isBluntStump <em>Blunt Stump</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Blunt Stump</em>'.
	 * @see org.ferrule.model.LesionMeasures#isBluntStump()
	 * @see #getLesionMeasures()
	 * @generated
	 */
	EAttribute getLesionMeasures_BluntStump();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.LesionMeasures#isCalcification <em>Calcification</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Calcification</em>'.
	 * @see org.ferrule.model.LesionMeasures#isCalcification()
	 * @see #getLesionMeasures()
	 * @generated
	 */
	EAttribute getLesionMeasures_Calcification();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.LesionMeasures#getBendDegrees <em>Bend Degrees</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Bend Degrees</em>'.
	 * @see org.ferrule.model.LesionMeasures#getBendDegrees()
	 * @see #getLesionMeasures()
	 * @generated
	 */
	EAttribute getLesionMeasures_BendDegrees();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.LesionMeasures#isFailedBefore <em>Failed Before</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Failed Before</em>'.
	 * @see org.ferrule.model.LesionMeasures#isFailedBefore()
	 * @see #getLesionMeasures()
	 * @generated
	 */
	EAttribute getLesionMeasures_FailedBefore();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.LesionMeasures#getOcclusionMonths <em>Occlusion Months</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Occlusion Months</em>'.
	 * @see org.ferrule.model.LesionMeasures#getOcclusionMonths()
	 * @see #getLesionMeasures()
	 * @generated
	 */
	EAttribute getLesionMeasures_OcclusionMonths();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.LesionMeasures#getCalciumDegrees <em>Calcium Degrees</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Calcium Degrees</em>'.
	 * @see org.ferrule.model.LesionMeasures#getCalciumDegrees()
	 * @see #getLesionMeasures()
	 * @generated
	 */
	EAttribute getLesionMeasures_CalciumDegrees();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.LesionMeasures#getCalciumThickness <em>Calcium Thickness</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Calcium Thickness</em>'.
	 * @see org.ferrule.model.LesionMeasures#getCalciumThickness()
	 * @see #getLesionMeasures()
	 * @generated
	 */
	EAttribute getLesionMeasures_CalciumThickness();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.LesionMeasures#getCalciumLength <em>Calcium Length</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Calcium Length</em>'.
	 * @see org.ferrule.model.LesionMeasures#getCalciumLength()
	 * @see #getLesionMeasures()
	 * @generated
	 */
	EAttribute getLesionMeasures_CalciumLength();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.LesionMeasures#getTraits <em>Traits</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Traits</em>'.
	 * @see org.ferrule.model.LesionMeasures#getTraits()
	 * @see #getLesionMeasures()
	 * @generated
	 */
	EAttribute getLesionMeasures_Traits();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.PatientFigures <em>Patient Figures</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Patient Figures</em>'.
	 * @see org.ferrule.model.PatientFigures
	 * @generated
	 */
	EClass getPatientFigures();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.PatientFigures#getAge <em>Age</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Age</em>'.
	 * @see org.ferrule.model.PatientFigures#getAge()
	 * @see #getPatientFigures()
	 * @generated
	 */
	EAttribute getPatientFigures_Age();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.PatientFigures#getWeight <em>Weight</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Weight</em>'.
	 * @see org.ferrule.model.PatientFigures#getWeight()
	 * @see #getPatientFigures()
	 * @generated
	 */
	EAttribute getPatientFigures_Weight();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.PatientFigures#getCreatinine <em>Creatinine</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Creatinine</em>'.
	 * @see org.ferrule.model.PatientFigures#getCreatinine()
	 * @see #getPatientFigures()
	 * @generated
	 */
	EAttribute getPatientFigures_Creatinine();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.PatientFigures#getSex <em>Sex</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sex</em>'.
	 * @see org.ferrule.model.PatientFigures#getSex()
	 * @see #getPatientFigures()
	 * @generated
	 */
	EAttribute getPatientFigures_Sex();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.CaseAim <em>Case Aim</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Case Aim</em>'.
	 * @see org.ferrule.model.CaseAim
	 * @generated
	 */
	EClass getCaseAim();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.CaseAim#getObjective <em>Objective</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Objective</em>'.
	 * @see org.ferrule.model.CaseAim#getObjective()
	 * @see #getCaseAim()
	 * @generated
	 */
	EAttribute getCaseAim_Objective();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.CaseAim#getStoppingCost <em>Stopping Cost</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Stopping Cost</em>'.
	 * @see org.ferrule.model.CaseAim#getStoppingCost()
	 * @see #getCaseAim()
	 * @generated
	 */
	EAttribute getCaseAim_StoppingCost();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.CaseAim#isTiersFirst <em>Tiers First</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Tiers First</em>'.
	 * @see org.ferrule.model.CaseAim#isTiersFirst()
	 * @see #getCaseAim()
	 * @generated
	 */
	EAttribute getCaseAim_TiersFirst();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.CaseAim#isOneNewRiskAStep <em>One New Risk AStep</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>One New Risk AStep</em>'.
	 * @see org.ferrule.model.CaseAim#isOneNewRiskAStep()
	 * @see #getCaseAim()
	 * @generated
	 */
	EAttribute getCaseAim_OneNewRiskAStep();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.CaseAim#getSameAxisDiscount <em>Same Axis Discount</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Same Axis Discount</em>'.
	 * @see org.ferrule.model.CaseAim#getSameAxisDiscount()
	 * @see #getCaseAim()
	 * @generated
	 */
	EAttribute getCaseAim_SameAxisDiscount();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.CaseAim#isBudgetsLimit <em>Budgets Limit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Budgets Limit</em>'.
	 * @see org.ferrule.model.CaseAim#isBudgetsLimit()
	 * @see #getCaseAim()
	 * @generated
	 */
	EAttribute getCaseAim_BudgetsLimit();

	/**
	 * Returns the meta object for the containment reference '{@link org.ferrule.model.CaseAim#getBudgets <em>Budgets</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference '<em>Budgets</em>'.
	 * @see org.ferrule.model.CaseAim#getBudgets()
	 * @see #getCaseAim()
	 * @generated
	 */
	EReference getCaseAim_Budgets();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Costs <em>Costs</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Costs</em>'.
	 * @see org.ferrule.model.Costs
	 * @generated
	 */
	EClass getCosts();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.LoggedAttempt <em>Logged Attempt</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Logged Attempt</em>'.
	 * @see org.ferrule.model.LoggedAttempt
	 * @generated
	 */
	EClass getLoggedAttempt();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.LoggedAttempt#getMove <em>Move</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Move</em>'.
	 * @see org.ferrule.model.LoggedAttempt#getMove()
	 * @see #getLoggedAttempt()
	 * @generated
	 */
	EAttribute getLoggedAttempt_Move();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.LoggedAttempt#getOutcome <em>Outcome</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Outcome</em>'.
	 * @see org.ferrule.model.LoggedAttempt#getOutcome()
	 * @see #getLoggedAttempt()
	 * @generated
	 */
	EAttribute getLoggedAttempt_Outcome();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.LoggedAttempt#getUnits <em>Units</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Units</em>'.
	 * @see org.ferrule.model.LoggedAttempt#getUnits()
	 * @see #getLoggedAttempt()
	 * @generated
	 */
	EReference getLoggedAttempt_Units();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.LoggedAttempt#getRemark <em>Remark</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Remark</em>'.
	 * @see org.ferrule.model.LoggedAttempt#getRemark()
	 * @see #getLoggedAttempt()
	 * @generated
	 */
	EAttribute getLoggedAttempt_Remark();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.UsedUnit <em>Used Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Used Unit</em>'.
	 * @see org.ferrule.model.UsedUnit
	 * @generated
	 */
	EClass getUsedUnit();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.UsedUnit#getRole <em>Role</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Role</em>'.
	 * @see org.ferrule.model.UsedUnit#getRole()
	 * @see #getUsedUnit()
	 * @generated
	 */
	EAttribute getUsedUnit_Role();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.UsedUnit#getItem <em>Item</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Item</em>'.
	 * @see org.ferrule.model.UsedUnit#getItem()
	 * @see #getUsedUnit()
	 * @generated
	 */
	EAttribute getUsedUnit_Item();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.UsedUnit#getLot <em>Lot</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lot</em>'.
	 * @see org.ferrule.model.UsedUnit#getLot()
	 * @see #getUsedUnit()
	 * @generated
	 */
	EAttribute getUsedUnit_Lot();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.Closing <em>Closing</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Closing</em>'.
	 * @see org.ferrule.model.Closing
	 * @generated
	 */
	EClass getClosing();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Closing#getClosed <em>Closed</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Closed</em>'.
	 * @see org.ferrule.model.Closing#getClosed()
	 * @see #getClosing()
	 * @generated
	 */
	EAttribute getClosing_Closed();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.Closing#getEnded <em>Ended</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Ended</em>'.
	 * @see org.ferrule.model.Closing#getEnded()
	 * @see #getClosing()
	 * @generated
	 */
	EAttribute getClosing_Ended();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.Closing#getPlan <em>Plan</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Plan</em>'.
	 * @see org.ferrule.model.Closing#getPlan()
	 * @see #getClosing()
	 * @generated
	 */
	EReference getClosing_Plan();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.Closing#getDevices <em>Devices</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Devices</em>'.
	 * @see org.ferrule.model.Closing#getDevices()
	 * @see #getClosing()
	 * @generated
	 */
	EReference getClosing_Devices();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.Closing#getHashes <em>Hashes</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Hashes</em>'.
	 * @see org.ferrule.model.Closing#getHashes()
	 * @see #getClosing()
	 * @generated
	 */
	EReference getClosing_Hashes();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.ClosedStep <em>Closed Step</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Closed Step</em>'.
	 * @see org.ferrule.model.ClosedStep
	 * @generated
	 */
	EClass getClosedStep();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ClosedStep#getMove <em>Move</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Move</em>'.
	 * @see org.ferrule.model.ClosedStep#getMove()
	 * @see #getClosedStep()
	 * @generated
	 */
	EAttribute getClosedStep_Move();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ClosedStep#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.ferrule.model.ClosedStep#getName()
	 * @see #getClosedStep()
	 * @generated
	 */
	EAttribute getClosedStep_Name();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.ClosedStep#getDevices <em>Devices</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Devices</em>'.
	 * @see org.ferrule.model.ClosedStep#getDevices()
	 * @see #getClosedStep()
	 * @generated
	 */
	EAttribute getClosedStep_Devices();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.ClosedDevice <em>Closed Device</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Closed Device</em>'.
	 * @see org.ferrule.model.ClosedDevice
	 * @generated
	 */
	EClass getClosedDevice();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ClosedDevice#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see org.ferrule.model.ClosedDevice#getId()
	 * @see #getClosedDevice()
	 * @generated
	 */
	EAttribute getClosedDevice_Id();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ClosedDevice#getItem <em>Item</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Item</em>'.
	 * @see org.ferrule.model.ClosedDevice#getItem()
	 * @see #getClosedDevice()
	 * @generated
	 */
	EAttribute getClosedDevice_Item();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ClosedDevice#getLot <em>Lot</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lot</em>'.
	 * @see org.ferrule.model.ClosedDevice#getLot()
	 * @see #getClosedDevice()
	 * @generated
	 */
	EAttribute getClosedDevice_Lot();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ClosedDevice#getExpiry <em>Expiry</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Expiry</em>'.
	 * @see org.ferrule.model.ClosedDevice#getExpiry()
	 * @see #getClosedDevice()
	 * @generated
	 */
	EAttribute getClosedDevice_Expiry();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.DocumentHash <em>Document Hash</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Document Hash</em>'.
	 * @see org.ferrule.model.DocumentHash
	 * @generated
	 */
	EClass getDocumentHash();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.DocumentHash#getFile <em>File</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>File</em>'.
	 * @see org.ferrule.model.DocumentHash#getFile()
	 * @see #getDocumentHash()
	 * @generated
	 */
	EAttribute getDocumentHash_File();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.DocumentHash#getRevision <em>Revision</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Revision</em>'.
	 * @see org.ferrule.model.DocumentHash#getRevision()
	 * @see #getDocumentHash()
	 * @generated
	 */
	EAttribute getDocumentHash_Revision();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.DocumentHash#getSha256 <em>Sha256</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Sha256</em>'.
	 * @see org.ferrule.model.DocumentHash#getSha256()
	 * @see #getDocumentHash()
	 * @generated
	 */
	EAttribute getDocumentHash_Sha256();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.ShelfDocument <em>Shelf Document</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Shelf Document</em>'.
	 * @see org.ferrule.model.ShelfDocument
	 * @generated
	 */
	EClass getShelfDocument();

	/**
	 * Returns the meta object for the attribute list '{@link org.ferrule.model.ShelfDocument#getLibraries <em>Libraries</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute list '<em>Libraries</em>'.
	 * @see org.ferrule.model.ShelfDocument#getLibraries()
	 * @see #getShelfDocument()
	 * @generated
	 */
	EAttribute getShelfDocument_Libraries();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.ShelfDocument#getCurrency <em>Currency</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Currency</em>'.
	 * @see org.ferrule.model.ShelfDocument#getCurrency()
	 * @see #getShelfDocument()
	 * @generated
	 */
	EAttribute getShelfDocument_Currency();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.ShelfDocument#getItems <em>Items</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Items</em>'.
	 * @see org.ferrule.model.ShelfDocument#getItems()
	 * @see #getShelfDocument()
	 * @generated
	 */
	EReference getShelfDocument_Items();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.StockItem <em>Stock Item</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Stock Item</em>'.
	 * @see org.ferrule.model.StockItem
	 * @generated
	 */
	EClass getStockItem();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.StockItem#getId <em>Id</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Id</em>'.
	 * @see org.ferrule.model.StockItem#getId()
	 * @see #getStockItem()
	 * @generated
	 */
	EAttribute getStockItem_Id();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.StockItem#getName <em>Name</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Name</em>'.
	 * @see org.ferrule.model.StockItem#getName()
	 * @see #getStockItem()
	 * @generated
	 */
	EAttribute getStockItem_Name();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.StockItem#getDevice <em>Device</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Device</em>'.
	 * @see org.ferrule.model.StockItem#getDevice()
	 * @see #getStockItem()
	 * @generated
	 */
	EAttribute getStockItem_Device();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.StockItem#getEquipment <em>Equipment</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Equipment</em>'.
	 * @see org.ferrule.model.StockItem#getEquipment()
	 * @see #getStockItem()
	 * @generated
	 */
	EAttribute getStockItem_Equipment();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.StockItem#getCode <em>Code</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Code</em>'.
	 * @see org.ferrule.model.StockItem#getCode()
	 * @see #getStockItem()
	 * @generated
	 */
	EAttribute getStockItem_Code();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.StockItem#getParLevel <em>Par Level</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Par Level</em>'.
	 * @see org.ferrule.model.StockItem#getParLevel()
	 * @see #getStockItem()
	 * @generated
	 */
	EAttribute getStockItem_ParLevel();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.StockItem#getPrice <em>Price</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Price</em>'.
	 * @see org.ferrule.model.StockItem#getPrice()
	 * @see #getStockItem()
	 * @generated
	 */
	EAttribute getStockItem_Price();

	/**
	 * Returns the meta object for the containment reference list '{@link org.ferrule.model.StockItem#getLots <em>Lots</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the containment reference list '<em>Lots</em>'.
	 * @see org.ferrule.model.StockItem#getLots()
	 * @see #getStockItem()
	 * @generated
	 */
	EReference getStockItem_Lots();

	/**
	 * Returns the meta object for class '{@link org.ferrule.model.StockLot <em>Stock Lot</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for class '<em>Stock Lot</em>'.
	 * @see org.ferrule.model.StockLot
	 * @generated
	 */
	EClass getStockLot();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.StockLot#getLot <em>Lot</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Lot</em>'.
	 * @see org.ferrule.model.StockLot#getLot()
	 * @see #getStockLot()
	 * @generated
	 */
	EAttribute getStockLot_Lot();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.StockLot#getExpiry <em>Expiry</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Expiry</em>'.
	 * @see org.ferrule.model.StockLot#getExpiry()
	 * @see #getStockLot()
	 * @generated
	 */
	EAttribute getStockLot_Expiry();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.StockLot#getQuantity <em>Quantity</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Quantity</em>'.
	 * @see org.ferrule.model.StockLot#getQuantity()
	 * @see #getStockLot()
	 * @generated
	 */
	EAttribute getStockLot_Quantity();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.StockLot#getLocation <em>Location</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Location</em>'.
	 * @see org.ferrule.model.StockLot#getLocation()
	 * @see #getStockLot()
	 * @generated
	 */
	EAttribute getStockLot_Location();

	/**
	 * Returns the meta object for the attribute '{@link org.ferrule.model.StockLot#getSerial <em>Serial</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for the attribute '<em>Serial</em>'.
	 * @see org.ferrule.model.StockLot#getSerial()
	 * @see #getStockLot()
	 * @generated
	 */
	EAttribute getStockLot_Serial();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.SourceKind <em>Source Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Source Kind</em>'.
	 * @see org.ferrule.model.SourceKind
	 * @generated
	 */
	EEnum getSourceKind();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.DeviceKind <em>Device Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Device Kind</em>'.
	 * @see org.ferrule.model.DeviceKind
	 * @generated
	 */
	EEnum getDeviceKind();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.LumenUse <em>Lumen Use</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Lumen Use</em>'.
	 * @see org.ferrule.model.LumenUse
	 * @generated
	 */
	EEnum getLumenUse();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.LumenOpening <em>Lumen Opening</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Lumen Opening</em>'.
	 * @see org.ferrule.model.LumenOpening
	 * @generated
	 */
	EEnum getLumenOpening();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.CutterType <em>Cutter Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Cutter Type</em>'.
	 * @see org.ferrule.model.CutterType
	 * @generated
	 */
	EEnum getCutterType();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.TransducerType <em>Transducer Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Transducer Type</em>'.
	 * @see org.ferrule.model.TransducerType
	 * @generated
	 */
	EEnum getTransducerType();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.ClaimType <em>Claim Type</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Claim Type</em>'.
	 * @see org.ferrule.model.ClaimType
	 * @generated
	 */
	EEnum getClaimType();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.Phase <em>Phase</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Phase</em>'.
	 * @see org.ferrule.model.Phase
	 * @generated
	 */
	EEnum getPhase();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.BenchOutcome <em>Bench Outcome</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Bench Outcome</em>'.
	 * @see org.ferrule.model.BenchOutcome
	 * @generated
	 */
	EEnum getBenchOutcome();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.FigureClass <em>Figure Class</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Figure Class</em>'.
	 * @see org.ferrule.model.FigureClass
	 * @generated
	 */
	EEnum getFigureClass();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.FlowUse <em>Flow Use</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Flow Use</em>'.
	 * @see org.ferrule.model.FlowUse
	 * @generated
	 */
	EEnum getFlowUse();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.AllowancePurpose <em>Allowance Purpose</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Allowance Purpose</em>'.
	 * @see org.ferrule.model.AllowancePurpose
	 * @generated
	 */
	EEnum getAllowancePurpose();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.RatioUse <em>Ratio Use</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Ratio Use</em>'.
	 * @see org.ferrule.model.RatioUse
	 * @generated
	 */
	EEnum getRatioUse();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.Grouping <em>Grouping</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Grouping</em>'.
	 * @see org.ferrule.model.Grouping
	 * @generated
	 */
	EEnum getGrouping();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.Sorting <em>Sorting</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Sorting</em>'.
	 * @see org.ferrule.model.Sorting
	 * @generated
	 */
	EEnum getSorting();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.Direction <em>Direction</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Direction</em>'.
	 * @see org.ferrule.model.Direction
	 * @generated
	 */
	EEnum getDirection();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.BendPlace <em>Bend Place</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Bend Place</em>'.
	 * @see org.ferrule.model.BendPlace
	 * @generated
	 */
	EEnum getBendPlace();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.PaperSize <em>Paper Size</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Paper Size</em>'.
	 * @see org.ferrule.model.PaperSize
	 * @generated
	 */
	EEnum getPaperSize();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.Orientation <em>Orientation</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Orientation</em>'.
	 * @see org.ferrule.model.Orientation
	 * @generated
	 */
	EEnum getOrientation();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.PrimaryUnit <em>Primary Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Primary Unit</em>'.
	 * @see org.ferrule.model.PrimaryUnit
	 * @generated
	 */
	EEnum getPrimaryUnit();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.ShownNumbers <em>Shown Numbers</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Shown Numbers</em>'.
	 * @see org.ferrule.model.ShownNumbers
	 * @generated
	 */
	EEnum getShownNumbers();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.TechniqueAxis <em>Technique Axis</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Technique Axis</em>'.
	 * @see org.ferrule.model.TechniqueAxis
	 * @generated
	 */
	EEnum getTechniqueAxis();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.Hazard <em>Hazard</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Hazard</em>'.
	 * @see org.ferrule.model.Hazard
	 * @generated
	 */
	EEnum getHazard();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.RoleTask <em>Role Task</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Role Task</em>'.
	 * @see org.ferrule.model.RoleTask
	 * @generated
	 */
	EEnum getRoleTask();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.Carrier <em>Carrier</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Carrier</em>'.
	 * @see org.ferrule.model.Carrier
	 * @generated
	 */
	EEnum getCarrier();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.RoleGoal <em>Role Goal</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Role Goal</em>'.
	 * @see org.ferrule.model.RoleGoal
	 * @generated
	 */
	EEnum getRoleGoal();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.SystemSlot <em>System Slot</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>System Slot</em>'.
	 * @see org.ferrule.model.SystemSlot
	 * @generated
	 */
	EEnum getSystemSlot();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.ResourceKind <em>Resource Kind</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Resource Kind</em>'.
	 * @see org.ferrule.model.ResourceKind
	 * @generated
	 */
	EEnum getResourceKind();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.AttemptOutcome <em>Attempt Outcome</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Attempt Outcome</em>'.
	 * @see org.ferrule.model.AttemptOutcome
	 * @generated
	 */
	EEnum getAttemptOutcome();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.CaseEnd <em>Case End</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Case End</em>'.
	 * @see org.ferrule.model.CaseEnd
	 * @generated
	 */
	EEnum getCaseEnd();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.Sex <em>Sex</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Sex</em>'.
	 * @see org.ferrule.model.Sex
	 * @generated
	 */
	EEnum getSex();

	/**
	 * Returns the meta object for enum '{@link org.ferrule.model.LesionTrait <em>Lesion Trait</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the meta object for enum '<em>Lesion Trait</em>'.
	 * @see org.ferrule.model.LesionTrait
	 * @generated
	 */
	EEnum getLesionTrait();

	/**
	 * Returns the meta object for data type '{@link org.ferrule.quantity.Dimension <em>Dimension</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A length or diameter as printed, with its unit and its meaning; keeps its text.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Dimension</em>'.
	 * @see org.ferrule.quantity.Dimension
	 * @model instanceClass="org.ferrule.quantity.Dimension"
	 * @generated
	 */
	EDataType getDimension();

	/**
	 * Returns the meta object for data type '{@link org.ferrule.quantity.Pressure <em>Pressure</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A pressure as printed, with its unit; keeps its text.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Pressure</em>'.
	 * @see org.ferrule.quantity.Pressure
	 * @model instanceClass="org.ferrule.quantity.Pressure"
	 * @generated
	 */
	EDataType getPressure();

	/**
	 * Returns the meta object for data type '{@link org.ferrule.quantity.Offset <em>Offset</em>}'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
     * <!-- begin-model-doc -->
     * A place in a cross-section as printed, with its unit; may be negative; keeps its text.
     * <!-- end-model-doc -->
	 * @return the meta object for data type '<em>Offset</em>'.
	 * @see org.ferrule.quantity.Offset
	 * @model instanceClass="org.ferrule.quantity.Offset"
	 * @generated
	 */
	EDataType getOffset();

	/**
	 * Returns the factory that creates the instances of the model.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the factory that creates the instances of the model.
	 * @generated
	 */
	ModelFactory getModelFactory();

	/**
	 * <!-- begin-user-doc -->
	 * Defines literals for the meta objects that represent
	 * <ul>
	 *   <li>each class,</li>
	 *   <li>each feature of each class,</li>
	 *   <li>each enum,</li>
	 *   <li>and each data type</li>
	 * </ul>
	 * <!-- end-user-doc -->
	 * @generated
	 */
	interface Literals
	{
		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.ExtraKeyImpl <em>Extra Key</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.ExtraKeyImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getExtraKey()
		 * @generated
		 */
		EClass EXTRA_KEY = eINSTANCE.getExtraKey();

		/**
		 * The meta object literal for the '<em><b>Key</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXTRA_KEY__KEY = eINSTANCE.getExtraKey_Key();

		/**
		 * The meta object literal for the '<em><b>Json</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute EXTRA_KEY__JSON = eINSTANCE.getExtraKey_Json();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.ElementImpl <em>Element</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.ElementImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getElement()
		 * @generated
		 */
		EClass ELEMENT = eINSTANCE.getElement();

		/**
		 * The meta object literal for the '<em><b>Extras</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ELEMENT__EXTRAS = eINSTANCE.getElement_Extras();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.SourcedImpl <em>Sourced</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.SourcedImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getSourced()
		 * @generated
		 */
		EClass SOURCED = eINSTANCE.getSourced();

		/**
		 * The meta object literal for the '<em><b>Source</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SOURCED__SOURCE = eINSTANCE.getSourced_Source();

		/**
		 * The meta object literal for the '<em><b>Page</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SOURCED__PAGE = eINSTANCE.getSourced_Page();

		/**
		 * The meta object literal for the '<em><b>Note</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SOURCED__NOTE = eINSTANCE.getSourced_Note();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.DocumentImpl <em>Document</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.DocumentImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getDocument()
		 * @generated
		 */
		EClass DOCUMENT = eINSTANCE.getDocument();

		/**
		 * The meta object literal for the '<em><b>Format</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DOCUMENT__FORMAT = eINSTANCE.getDocument_Format();

		/**
		 * The meta object literal for the '<em><b>Version</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DOCUMENT__VERSION = eINSTANCE.getDocument_Version();

		/**
		 * The meta object literal for the '<em><b>Title</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DOCUMENT__TITLE = eINSTANCE.getDocument_Title();

		/**
		 * The meta object literal for the '<em><b>Revision</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DOCUMENT__REVISION = eINSTANCE.getDocument_Revision();

		/**
		 * The meta object literal for the '<em><b>Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DOCUMENT__DATE = eINSTANCE.getDocument_Date();

		/**
		 * The meta object literal for the '<em><b>Sources</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DOCUMENT__SOURCES = eINSTANCE.getDocument_Sources();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.SourceImpl <em>Source</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.SourceImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getSource()
		 * @generated
		 */
		EClass SOURCE = eINSTANCE.getSource();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SOURCE__ID = eINSTANCE.getSource_Id();

		/**
		 * The meta object literal for the '<em><b>Title</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SOURCE__TITLE = eINSTANCE.getSource_Title();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SOURCE__KIND = eINSTANCE.getSource_Kind();

		/**
		 * The meta object literal for the '<em><b>Revision</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SOURCE__REVISION = eINSTANCE.getSource_Revision();

		/**
		 * The meta object literal for the '<em><b>Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SOURCE__DATE = eINSTANCE.getSource_Date();

		/**
		 * The meta object literal for the '<em><b>Reviewer</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SOURCE__REVIEWER = eINSTANCE.getSource_Reviewer();

		/**
		 * The meta object literal for the '<em><b>Reviewed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SOURCE__REVIEWED = eINSTANCE.getSource_Reviewed();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.DeviceLibraryImpl <em>Device Library</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.DeviceLibraryImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getDeviceLibrary()
		 * @generated
		 */
		EClass DEVICE_LIBRARY = eINSTANCE.getDeviceLibrary();

		/**
		 * The meta object literal for the '<em><b>Lines</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DEVICE_LIBRARY__LINES = eINSTANCE.getDeviceLibrary_Lines();

		/**
		 * The meta object literal for the '<em><b>Devices</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DEVICE_LIBRARY__DEVICES = eINSTANCE.getDeviceLibrary_Devices();

		/**
		 * The meta object literal for the '<em><b>Bench</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DEVICE_LIBRARY__BENCH = eINSTANCE.getDeviceLibrary_Bench();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.DevicePartsImpl <em>Device Parts</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.DevicePartsImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getDeviceParts()
		 * @generated
		 */
		EClass DEVICE_PARTS = eINSTANCE.getDeviceParts();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEVICE_PARTS__ID = eINSTANCE.getDeviceParts_Id();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEVICE_PARTS__NAME = eINSTANCE.getDeviceParts_Name();

		/**
		 * The meta object literal for the '<em><b>Kind</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEVICE_PARTS__KIND = eINSTANCE.getDeviceParts_Kind();

		/**
		 * The meta object literal for the '<em><b>Maker</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEVICE_PARTS__MAKER = eINSTANCE.getDeviceParts_Maker();

		/**
		 * The meta object literal for the '<em><b>Model</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEVICE_PARTS__MODEL = eINSTANCE.getDeviceParts_Model();

		/**
		 * The meta object literal for the '<em><b>Size</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEVICE_PARTS__SIZE = eINSTANCE.getDeviceParts_Size();

		/**
		 * The meta object literal for the '<em><b>Effective Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEVICE_PARTS__EFFECTIVE_LENGTH = eINSTANCE.getDeviceParts_EffectiveLength();

		/**
		 * The meta object literal for the '<em><b>Takes Wire</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEVICE_PARTS__TAKES_WIRE = eINSTANCE.getDeviceParts_TakesWire();

		/**
		 * The meta object literal for the '<em><b>Sections</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DEVICE_PARTS__SECTIONS = eINSTANCE.getDeviceParts_Sections();

		/**
		 * The meta object literal for the '<em><b>Lumens</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DEVICE_PARTS__LUMENS = eINSTANCE.getDeviceParts_Lumens();

		/**
		 * The meta object literal for the '<em><b>Markers</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DEVICE_PARTS__MARKERS = eINSTANCE.getDeviceParts_Markers();

		/**
		 * The meta object literal for the '<em><b>Balloon</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DEVICE_PARTS__BALLOON = eINSTANCE.getDeviceParts_Balloon();

		/**
		 * The meta object literal for the '<em><b>Stent</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DEVICE_PARTS__STENT = eINSTANCE.getDeviceParts_Stent();

		/**
		 * The meta object literal for the '<em><b>Cutter</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DEVICE_PARTS__CUTTER = eINSTANCE.getDeviceParts_Cutter();

		/**
		 * The meta object literal for the '<em><b>Transducer</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DEVICE_PARTS__TRANSDUCER = eINSTANCE.getDeviceParts_Transducer();

		/**
		 * The meta object literal for the '<em><b>Wire</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DEVICE_PARTS__WIRE = eINSTANCE.getDeviceParts_Wire();

		/**
		 * The meta object literal for the '<em><b>Claims</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference DEVICE_PARTS__CLAIMS = eINSTANCE.getDeviceParts_Claims();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.DeviceLineImpl <em>Device Line</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.DeviceLineImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getDeviceLine()
		 * @generated
		 */
		EClass DEVICE_LINE = eINSTANCE.getDeviceLine();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.DeviceImpl <em>Device</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.DeviceImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getDevice()
		 * @generated
		 */
		EClass DEVICE = eINSTANCE.getDevice();

		/**
		 * The meta object literal for the '<em><b>Line</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DEVICE__LINE = eINSTANCE.getDevice_Line();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.ShaftSectionImpl <em>Shaft Section</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.ShaftSectionImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getShaftSection()
		 * @generated
		 */
		EClass SHAFT_SECTION = eINSTANCE.getShaftSection();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHAFT_SECTION__NAME = eINSTANCE.getShaftSection_Name();

		/**
		 * The meta object literal for the '<em><b>From</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHAFT_SECTION__FROM = eINSTANCE.getShaftSection_From();

		/**
		 * The meta object literal for the '<em><b>To</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHAFT_SECTION__TO = eINSTANCE.getShaftSection_To();

		/**
		 * The meta object literal for the '<em><b>Od</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHAFT_SECTION__OD = eINSTANCE.getShaftSection_Od();

		/**
		 * The meta object literal for the '<em><b>Od Proximal</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHAFT_SECTION__OD_PROXIMAL = eINSTANCE.getShaftSection_OdProximal();

		/**
		 * The meta object literal for the '<em><b>Od After</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHAFT_SECTION__OD_AFTER = eINSTANCE.getShaftSection_OdAfter();

		/**
		 * The meta object literal for the '<em><b>Od After Proximal</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHAFT_SECTION__OD_AFTER_PROXIMAL = eINSTANCE.getShaftSection_OdAfterProximal();

		/**
		 * The meta object literal for the '<em><b>Oval</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SHAFT_SECTION__OVAL = eINSTANCE.getShaftSection_Oval();

		/**
		 * The meta object literal for the '<em><b>Discs</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SHAFT_SECTION__DISCS = eINSTANCE.getShaftSection_Discs();

		/**
		 * The meta object literal for the '<em><b>Rigid</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHAFT_SECTION__RIGID = eINSTANCE.getShaftSection_Rigid();

		/**
		 * The meta object literal for the '<em><b>Stiffness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHAFT_SECTION__STIFFNESS = eINSTANCE.getShaftSection_Stiffness();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.OvalImpl <em>Oval</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.OvalImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getOval()
		 * @generated
		 */
		EClass OVAL = eINSTANCE.getOval();

		/**
		 * The meta object literal for the '<em><b>Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OVAL__WIDTH = eINSTANCE.getOval_Width();

		/**
		 * The meta object literal for the '<em><b>Height</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OVAL__HEIGHT = eINSTANCE.getOval_Height();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.DiscImpl <em>Disc</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.DiscImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getDisc()
		 * @generated
		 */
		EClass DISC = eINSTANCE.getDisc();

		/**
		 * The meta object literal for the '<em><b>X</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DISC__X = eINSTANCE.getDisc_X();

		/**
		 * The meta object literal for the '<em><b>Y</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DISC__Y = eINSTANCE.getDisc_Y();

		/**
		 * The meta object literal for the '<em><b>Diameter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DISC__DIAMETER = eINSTANCE.getDisc_Diameter();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.LumenImpl <em>Lumen</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.LumenImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getLumen()
		 * @generated
		 */
		EClass LUMEN = eINSTANCE.getLumen();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LUMEN__NAME = eINSTANCE.getLumen_Name();

		/**
		 * The meta object literal for the '<em><b>Use</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LUMEN__USE = eINSTANCE.getLumen_Use();

		/**
		 * The meta object literal for the '<em><b>Distal At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LUMEN__DISTAL_AT = eINSTANCE.getLumen_DistalAt();

		/**
		 * The meta object literal for the '<em><b>Proximal At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LUMEN__PROXIMAL_AT = eINSTANCE.getLumen_ProximalAt();

		/**
		 * The meta object literal for the '<em><b>Opens</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LUMEN__OPENS = eINSTANCE.getLumen_Opens();

		/**
		 * The meta object literal for the '<em><b>Sections</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference LUMEN__SECTIONS = eINSTANCE.getLumen_Sections();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.LumenSectionImpl <em>Lumen Section</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.LumenSectionImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getLumenSection()
		 * @generated
		 */
		EClass LUMEN_SECTION = eINSTANCE.getLumenSection();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LUMEN_SECTION__NAME = eINSTANCE.getLumenSection_Name();

		/**
		 * The meta object literal for the '<em><b>From</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LUMEN_SECTION__FROM = eINSTANCE.getLumenSection_From();

		/**
		 * The meta object literal for the '<em><b>To</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LUMEN_SECTION__TO = eINSTANCE.getLumenSection_To();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LUMEN_SECTION__ID = eINSTANCE.getLumenSection_Id();

		/**
		 * The meta object literal for the '<em><b>Id Distal</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LUMEN_SECTION__ID_DISTAL = eINSTANCE.getLumenSection_IdDistal();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.MarkerImpl <em>Marker</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.MarkerImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getMarker()
		 * @generated
		 */
		EClass MARKER = eINSTANCE.getMarker();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MARKER__AT = eINSTANCE.getMarker_At();

		/**
		 * The meta object literal for the '<em><b>Width</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MARKER__WIDTH = eINSTANCE.getMarker_Width();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.BalloonImpl <em>Balloon</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.BalloonImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getBalloon()
		 * @generated
		 */
		EClass BALLOON = eINSTANCE.getBalloon();

		/**
		 * The meta object literal for the '<em><b>Section</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BALLOON__SECTION = eINSTANCE.getBalloon_Section();

		/**
		 * The meta object literal for the '<em><b>Diameter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BALLOON__DIAMETER = eINSTANCE.getBalloon_Diameter();

		/**
		 * The meta object literal for the '<em><b>Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BALLOON__LENGTH = eINSTANCE.getBalloon_Length();

		/**
		 * The meta object literal for the '<em><b>Nominal Pressure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BALLOON__NOMINAL_PRESSURE = eINSTANCE.getBalloon_NominalPressure();

		/**
		 * The meta object literal for the '<em><b>Rated Burst Pressure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BALLOON__RATED_BURST_PRESSURE = eINSTANCE.getBalloon_RatedBurstPressure();

		/**
		 * The meta object literal for the '<em><b>Compliance</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference BALLOON__COMPLIANCE = eINSTANCE.getBalloon_Compliance();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.ComplianceRowImpl <em>Compliance Row</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.ComplianceRowImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getComplianceRow()
		 * @generated
		 */
		EClass COMPLIANCE_ROW = eINSTANCE.getComplianceRow();

		/**
		 * The meta object literal for the '<em><b>Pressure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COMPLIANCE_ROW__PRESSURE = eINSTANCE.getComplianceRow_Pressure();

		/**
		 * The meta object literal for the '<em><b>Diameter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COMPLIANCE_ROW__DIAMETER = eINSTANCE.getComplianceRow_Diameter();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.StentImpl <em>Stent</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.StentImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getStent()
		 * @generated
		 */
		EClass STENT = eINSTANCE.getStent();

		/**
		 * The meta object literal for the '<em><b>Section</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENT__SECTION = eINSTANCE.getStent_Section();

		/**
		 * The meta object literal for the '<em><b>Diameter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENT__DIAMETER = eINSTANCE.getStent_Diameter();

		/**
		 * The meta object literal for the '<em><b>Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENT__LENGTH = eINSTANCE.getStent_Length();

		/**
		 * The meta object literal for the '<em><b>Maximum Diameter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENT__MAXIMUM_DIAMETER = eINSTANCE.getStent_MaximumDiameter();

		/**
		 * The meta object literal for the '<em><b>Material</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENT__MATERIAL = eINSTANCE.getStent_Material();

		/**
		 * The meta object literal for the '<em><b>Strut Thickness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STENT__STRUT_THICKNESS = eINSTANCE.getStent_StrutThickness();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.CutterImpl <em>Cutter</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.CutterImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getCutter()
		 * @generated
		 */
		EClass CUTTER = eINSTANCE.getCutter();

		/**
		 * The meta object literal for the '<em><b>Section</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CUTTER__SECTION = eINSTANCE.getCutter_Section();

		/**
		 * The meta object literal for the '<em><b>Type</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CUTTER__TYPE = eINSTANCE.getCutter_Type();

		/**
		 * The meta object literal for the '<em><b>Diameter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CUTTER__DIAMETER = eINSTANCE.getCutter_Diameter();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.TransducerImpl <em>Transducer</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.TransducerImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getTransducer()
		 * @generated
		 */
		EClass TRANSDUCER = eINSTANCE.getTransducer();

		/**
		 * The meta object literal for the '<em><b>Type</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRANSDUCER__TYPE = eINSTANCE.getTransducer_Type();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TRANSDUCER__AT = eINSTANCE.getTransducer_At();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.WireTraitsImpl <em>Wire Traits</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.WireTraitsImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getWireTraits()
		 * @generated
		 */
		EClass WIRE_TRAITS = eINSTANCE.getWireTraits();

		/**
		 * The meta object literal for the '<em><b>Tip Load</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WIRE_TRAITS__TIP_LOAD = eINSTANCE.getWireTraits_TipLoad();

		/**
		 * The meta object literal for the '<em><b>Tip Shape</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WIRE_TRAITS__TIP_SHAPE = eINSTANCE.getWireTraits_TipShape();

		/**
		 * The meta object literal for the '<em><b>Extendable</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WIRE_TRAITS__EXTENDABLE = eINSTANCE.getWireTraits_Extendable();

		/**
		 * The meta object literal for the '<em><b>Coating</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute WIRE_TRAITS__COATING = eINSTANCE.getWireTraits_Coating();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.ClaimImpl <em>Claim</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.ClaimImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getClaim()
		 * @generated
		 */
		EClass CLAIM = eINSTANCE.getClaim();

		/**
		 * The meta object literal for the '<em><b>Type</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLAIM__TYPE = eINSTANCE.getClaim_Type();

		/**
		 * The meta object literal for the '<em><b>Value</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLAIM__VALUE = eINSTANCE.getClaim_Value();

		/**
		 * The meta object literal for the '<em><b>Kinds</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLAIM__KINDS = eINSTANCE.getClaim_Kinds();

		/**
		 * The meta object literal for the '<em><b>Sizes</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLAIM__SIZES = eINSTANCE.getClaim_Sizes();

		/**
		 * The meta object literal for the '<em><b>Devices</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLAIM__DEVICES = eINSTANCE.getClaim_Devices();

		/**
		 * The meta object literal for the '<em><b>Wire</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLAIM__WIRE = eINSTANCE.getClaim_Wire();

		/**
		 * The meta object literal for the '<em><b>Alone</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLAIM__ALONE = eINSTANCE.getClaim_Alone();

		/**
		 * The meta object literal for the '<em><b>Covers</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLAIM__COVERS = eINSTANCE.getClaim_Covers();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.BenchResultImpl <em>Bench Result</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.BenchResultImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getBenchResult()
		 * @generated
		 */
		EClass BENCH_RESULT = eINSTANCE.getBenchResult();

		/**
		 * The meta object literal for the '<em><b>Outer</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BENCH_RESULT__OUTER = eINSTANCE.getBenchResult_Outer();

		/**
		 * The meta object literal for the '<em><b>Lumen</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BENCH_RESULT__LUMEN = eINSTANCE.getBenchResult_Lumen();

		/**
		 * The meta object literal for the '<em><b>Inner</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BENCH_RESULT__INNER = eINSTANCE.getBenchResult_Inner();

		/**
		 * The meta object literal for the '<em><b>Wire</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BENCH_RESULT__WIRE = eINSTANCE.getBenchResult_Wire();

		/**
		 * The meta object literal for the '<em><b>Result</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BENCH_RESULT__RESULT = eINSTANCE.getBenchResult_Result();

		/**
		 * The meta object literal for the '<em><b>Covers</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BENCH_RESULT__COVERS = eINSTANCE.getBenchResult_Covers();

		/**
		 * The meta object literal for the '<em><b>Samples</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BENCH_RESULT__SAMPLES = eINSTANCE.getBenchResult_Samples();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.RuleSetImpl <em>Rule Set</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.RuleSetImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getRuleSet()
		 * @generated
		 */
		EClass RULE_SET = eINSTANCE.getRuleSet();

		/**
		 * The meta object literal for the '<em><b>Spans</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RULE_SET__SPANS = eINSTANCE.getRuleSet_Spans();

		/**
		 * The meta object literal for the '<em><b>Clearances</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RULE_SET__CLEARANCES = eINSTANCE.getRuleSet_Clearances();

		/**
		 * The meta object literal for the '<em><b>After Use</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RULE_SET__AFTER_USE = eINSTANCE.getRuleSet_AfterUse();

		/**
		 * The meta object literal for the '<em><b>Flow Limits</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RULE_SET__FLOW_LIMITS = eINSTANCE.getRuleSet_FlowLimits();

		/**
		 * The meta object literal for the '<em><b>Allowances</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RULE_SET__ALLOWANCES = eINSTANCE.getRuleSet_Allowances();

		/**
		 * The meta object literal for the '<em><b>Ratio Bands</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RULE_SET__RATIO_BANDS = eINSTANCE.getRuleSet_RatioBands();

		/**
		 * The meta object literal for the '<em><b>Chance Limits</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference RULE_SET__CHANCE_LIMITS = eINSTANCE.getRuleSet_ChanceLimits();

		/**
		 * The meta object literal for the '<em><b>Confidence</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RULE_SET__CONFIDENCE = eINSTANCE.getRuleSet_Confidence();

		/**
		 * The meta object literal for the '<em><b>Coverage</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RULE_SET__COVERAGE = eINSTANCE.getRuleSet_Coverage();

		/**
		 * The meta object literal for the '<em><b>Wire Ahead</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RULE_SET__WIRE_AHEAD = eINSTANCE.getRuleSet_WireAhead();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.SpanImpl <em>Span</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.SpanImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getSpan()
		 * @generated
		 */
		EClass SPAN = eINSTANCE.getSpan();

		/**
		 * The meta object literal for the '<em><b>Figure</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPAN__FIGURE = eINSTANCE.getSpan_Figure();

		/**
		 * The meta object literal for the '<em><b>Kinds</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPAN__KINDS = eINSTANCE.getSpan_Kinds();

		/**
		 * The meta object literal for the '<em><b>Below</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPAN__BELOW = eINSTANCE.getSpan_Below();

		/**
		 * The meta object literal for the '<em><b>Above</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPAN__ABOVE = eINSTANCE.getSpan_Above();

		/**
		 * The meta object literal for the '<em><b>Runs Low</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SPAN__RUNS_LOW = eINSTANCE.getSpan_RunsLow();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.ClearanceRuleImpl <em>Clearance Rule</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.ClearanceRuleImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getClearanceRule()
		 * @generated
		 */
		EClass CLEARANCE_RULE = eINSTANCE.getClearanceRule();

		/**
		 * The meta object literal for the '<em><b>Outer</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLEARANCE_RULE__OUTER = eINSTANCE.getClearanceRule_Outer();

		/**
		 * The meta object literal for the '<em><b>Inner</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLEARANCE_RULE__INNER = eINSTANCE.getClearanceRule_Inner();

		/**
		 * The meta object literal for the '<em><b>Required</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLEARANCE_RULE__REQUIRED = eINSTANCE.getClearanceRule_Required();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.AfterUseRuleImpl <em>After Use Rule</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.AfterUseRuleImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getAfterUseRule()
		 * @generated
		 */
		EClass AFTER_USE_RULE = eINSTANCE.getAfterUseRule();

		/**
		 * The meta object literal for the '<em><b>Kinds</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AFTER_USE_RULE__KINDS = eINSTANCE.getAfterUseRule_Kinds();

		/**
		 * The meta object literal for the '<em><b>Growth Low</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AFTER_USE_RULE__GROWTH_LOW = eINSTANCE.getAfterUseRule_GrowthLow();

		/**
		 * The meta object literal for the '<em><b>Growth Centre</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AFTER_USE_RULE__GROWTH_CENTRE = eINSTANCE.getAfterUseRule_GrowthCentre();

		/**
		 * The meta object literal for the '<em><b>Growth High</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AFTER_USE_RULE__GROWTH_HIGH = eINSTANCE.getAfterUseRule_GrowthHigh();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.FlowLimitImpl <em>Flow Limit</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.FlowLimitImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getFlowLimit()
		 * @generated
		 */
		EClass FLOW_LIMIT = eINSTANCE.getFlowLimit();

		/**
		 * The meta object literal for the '<em><b>Use</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FLOW_LIMIT__USE = eINSTANCE.getFlowLimit_Use();

		/**
		 * The meta object literal for the '<em><b>Least</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FLOW_LIMIT__LEAST = eINSTANCE.getFlowLimit_Least();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.AllowanceImpl <em>Allowance</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.AllowanceImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getAllowance()
		 * @generated
		 */
		EClass ALLOWANCE = eINSTANCE.getAllowance();

		/**
		 * The meta object literal for the '<em><b>Purpose</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALLOWANCE__PURPOSE = eINSTANCE.getAllowance_Purpose();

		/**
		 * The meta object literal for the '<em><b>Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ALLOWANCE__LENGTH = eINSTANCE.getAllowance_Length();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.RatioBandImpl <em>Ratio Band</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.RatioBandImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getRatioBand()
		 * @generated
		 */
		EClass RATIO_BAND = eINSTANCE.getRatioBand();

		/**
		 * The meta object literal for the '<em><b>Use</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RATIO_BAND__USE = eINSTANCE.getRatioBand_Use();

		/**
		 * The meta object literal for the '<em><b>Low</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RATIO_BAND__LOW = eINSTANCE.getRatioBand_Low();

		/**
		 * The meta object literal for the '<em><b>High</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RATIO_BAND__HIGH = eINSTANCE.getRatioBand_High();

		/**
		 * The meta object literal for the '<em><b>Meaning</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute RATIO_BAND__MEANING = eINSTANCE.getRatioBand_Meaning();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.ChanceLimitImpl <em>Chance Limit</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.ChanceLimitImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getChanceLimit()
		 * @generated
		 */
		EClass CHANCE_LIMIT = eINSTANCE.getChanceLimit();

		/**
		 * The meta object literal for the '<em><b>Greatest</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CHANCE_LIMIT__GREATEST = eINSTANCE.getChanceLimit_Greatest();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.FitChartImpl <em>Fit Chart</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.FitChartImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getFitChart()
		 * @generated
		 */
		EClass FIT_CHART = eINSTANCE.getFitChart();

		/**
		 * The meta object literal for the '<em><b>Audience</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIT_CHART__AUDIENCE = eINSTANCE.getFitChart_Audience();

		/**
		 * The meta object literal for the '<em><b>Author</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIT_CHART__AUTHOR = eINSTANCE.getFitChart_Author();

		/**
		 * The meta object literal for the '<em><b>Libraries</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIT_CHART__LIBRARIES = eINSTANCE.getFitChart_Libraries();

		/**
		 * The meta object literal for the '<em><b>Rules</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIT_CHART__RULES = eINSTANCE.getFitChart_Rules();

		/**
		 * The meta object literal for the '<em><b>Outer</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FIT_CHART__OUTER = eINSTANCE.getFitChart_Outer();

		/**
		 * The meta object literal for the '<em><b>Inner</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FIT_CHART__INNER = eINSTANCE.getFitChart_Inner();

		/**
		 * The meta object literal for the '<em><b>Conditions</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FIT_CHART__CONDITIONS = eINSTANCE.getFitChart_Conditions();

		/**
		 * The meta object literal for the '<em><b>Path</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FIT_CHART__PATH = eINSTANCE.getFitChart_Path();

		/**
		 * The meta object literal for the '<em><b>Lesion</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FIT_CHART__LESION = eINSTANCE.getFitChart_Lesion();

		/**
		 * The meta object literal for the '<em><b>Paper</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FIT_CHART__PAPER = eINSTANCE.getFitChart_Paper();

		/**
		 * The meta object literal for the '<em><b>Footnotes</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FIT_CHART__FOOTNOTES = eINSTANCE.getFitChart_Footnotes();

		/**
		 * The meta object literal for the '<em><b>Sign Off</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference FIT_CHART__SIGN_OFF = eINSTANCE.getFitChart_SignOff();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.SignOffImpl <em>Sign Off</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.SignOffImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getSignOff()
		 * @generated
		 */
		EClass SIGN_OFF = eINSTANCE.getSignOff();

		/**
		 * The meta object literal for the '<em><b>By</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIGN_OFF__BY = eINSTANCE.getSignOff_By();

		/**
		 * The meta object literal for the '<em><b>Date</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIGN_OFF__DATE = eINSTANCE.getSignOff_Date();

		/**
		 * The meta object literal for the '<em><b>Rule Set</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIGN_OFF__RULE_SET = eINSTANCE.getSignOff_RuleSet();

		/**
		 * The meta object literal for the '<em><b>Asked</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIGN_OFF__ASKED = eINSTANCE.getSignOff_Asked();

		/**
		 * The meta object literal for the '<em><b>Documents</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SIGN_OFF__DOCUMENTS = eINSTANCE.getSignOff_Documents();

		/**
		 * The meta object literal for the '<em><b>Inner</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIGN_OFF__INNER = eINSTANCE.getSignOff_Inner();

		/**
		 * The meta object literal for the '<em><b>Rows</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SIGN_OFF__ROWS = eINSTANCE.getSignOff_Rows();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.SignedRowImpl <em>Signed Row</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.SignedRowImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getSignedRow()
		 * @generated
		 */
		EClass SIGNED_ROW = eINSTANCE.getSignedRow();

		/**
		 * The meta object literal for the '<em><b>Outer</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIGNED_ROW__OUTER = eINSTANCE.getSignedRow_Outer();

		/**
		 * The meta object literal for the '<em><b>In</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIGNED_ROW__IN = eINSTANCE.getSignedRow_In();

		/**
		 * The meta object literal for the '<em><b>Out</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIGNED_ROW__OUT = eINSTANCE.getSignedRow_Out();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.AxisImpl <em>Axis</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.AxisImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getAxis()
		 * @generated
		 */
		EClass AXIS = eINSTANCE.getAxis();

		/**
		 * The meta object literal for the '<em><b>Kinds</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AXIS__KINDS = eINSTANCE.getAxis_Kinds();

		/**
		 * The meta object literal for the '<em><b>Devices</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AXIS__DEVICES = eINSTANCE.getAxis_Devices();

		/**
		 * The meta object literal for the '<em><b>Hidden</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AXIS__HIDDEN = eINSTANCE.getAxis_Hidden();

		/**
		 * The meta object literal for the '<em><b>Group By</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AXIS__GROUP_BY = eINSTANCE.getAxis_GroupBy();

		/**
		 * The meta object literal for the '<em><b>Sort By</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute AXIS__SORT_BY = eINSTANCE.getAxis_SortBy();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.ConditionsImpl <em>Conditions</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.ConditionsImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getConditions()
		 * @generated
		 */
		EClass CONDITIONS = eINSTANCE.getConditions();

		/**
		 * The meta object literal for the '<em><b>Direction</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CONDITIONS__DIRECTION = eINSTANCE.getConditions_Direction();

		/**
		 * The meta object literal for the '<em><b>Wire</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CONDITIONS__WIRE = eINSTANCE.getConditions_Wire();

		/**
		 * The meta object literal for the '<em><b>Reach</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CONDITIONS__REACH = eINSTANCE.getConditions_Reach();

		/**
		 * The meta object literal for the '<em><b>Inside</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CONDITIONS__INSIDE = eINSTANCE.getConditions_Inside();

		/**
		 * The meta object literal for the '<em><b>Through</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CONDITIONS__THROUGH = eINSTANCE.getConditions_Through();

		/**
		 * The meta object literal for the '<em><b>Bends</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CONDITIONS__BENDS = eINSTANCE.getConditions_Bends();

		/**
		 * The meta object literal for the '<em><b>After Inflation</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CONDITIONS__AFTER_INFLATION = eINSTANCE.getConditions_AfterInflation();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.OccupantImpl <em>Occupant</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.OccupantImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getOccupant()
		 * @generated
		 */
		EClass OCCUPANT = eINSTANCE.getOccupant();

		/**
		 * The meta object literal for the '<em><b>Device</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OCCUPANT__DEVICE = eINSTANCE.getOccupant_Device();

		/**
		 * The meta object literal for the '<em><b>Wire</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OCCUPANT__WIRE = eINSTANCE.getOccupant_Wire();

		/**
		 * The meta object literal for the '<em><b>Tip Ahead</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OCCUPANT__TIP_AHEAD = eINSTANCE.getOccupant_TipAhead();

		/**
		 * The meta object literal for the '<em><b>Used</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute OCCUPANT__USED = eINSTANCE.getOccupant_Used();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.ThroughExtensionImpl <em>Through Extension</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.ThroughExtensionImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getThroughExtension()
		 * @generated
		 */
		EClass THROUGH_EXTENSION = eINSTANCE.getThroughExtension();

		/**
		 * The meta object literal for the '<em><b>Extension</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute THROUGH_EXTENSION__EXTENSION = eINSTANCE.getThroughExtension_Extension();

		/**
		 * The meta object literal for the '<em><b>Protrusion</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute THROUGH_EXTENSION__PROTRUSION = eINSTANCE.getThroughExtension_Protrusion();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.BendImpl <em>Bend</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.BendImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getBend()
		 * @generated
		 */
		EClass BEND = eINSTANCE.getBend();

		/**
		 * The meta object literal for the '<em><b>Where</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BEND__WHERE = eINSTANCE.getBend_Where();

		/**
		 * The meta object literal for the '<em><b>Radius</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BEND__RADIUS = eINSTANCE.getBend_Radius();

		/**
		 * The meta object literal for the '<em><b>Angle Degrees</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BEND__ANGLE_DEGREES = eINSTANCE.getBend_AngleDegrees();

		/**
		 * The meta object literal for the '<em><b>Vessel Diameter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute BEND__VESSEL_DIAMETER = eINSTANCE.getBend_VesselDiameter();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.VesselPathImpl <em>Vessel Path</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.VesselPathImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getVesselPath()
		 * @generated
		 */
		EClass VESSEL_PATH = eINSTANCE.getVesselPath();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL_PATH__NAME = eINSTANCE.getVesselPath_Name();

		/**
		 * The meta object literal for the '<em><b>Segments</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference VESSEL_PATH__SEGMENTS = eINSTANCE.getVesselPath_Segments();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.VesselSegmentImpl <em>Vessel Segment</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.VesselSegmentImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getVesselSegment()
		 * @generated
		 */
		EClass VESSEL_SEGMENT = eINSTANCE.getVesselSegment();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL_SEGMENT__NAME = eINSTANCE.getVesselSegment_Name();

		/**
		 * The meta object literal for the '<em><b>Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL_SEGMENT__LENGTH = eINSTANCE.getVesselSegment_Length();

		/**
		 * The meta object literal for the '<em><b>Diameter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL_SEGMENT__DIAMETER = eINSTANCE.getVesselSegment_Diameter();

		/**
		 * The meta object literal for the '<em><b>Bend Radius</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL_SEGMENT__BEND_RADIUS = eINSTANCE.getVesselSegment_BendRadius();

		/**
		 * The meta object literal for the '<em><b>Bend Angle Degrees</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute VESSEL_SEGMENT__BEND_ANGLE_DEGREES = eINSTANCE.getVesselSegment_BendAngleDegrees();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.LesionImpl <em>Lesion</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.LesionImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getLesion()
		 * @generated
		 */
		EClass LESION = eINSTANCE.getLesion();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LESION__NAME = eINSTANCE.getLesion_Name();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LESION__AT = eINSTANCE.getLesion_At();

		/**
		 * The meta object literal for the '<em><b>Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LESION__LENGTH = eINSTANCE.getLesion_Length();

		/**
		 * The meta object literal for the '<em><b>Diameter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LESION__DIAMETER = eINSTANCE.getLesion_Diameter();

		/**
		 * The meta object literal for the '<em><b>Reference</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LESION__REFERENCE = eINSTANCE.getLesion_Reference();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.PaperImpl <em>Paper</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.PaperImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getPaper()
		 * @generated
		 */
		EClass PAPER = eINSTANCE.getPaper();

		/**
		 * The meta object literal for the '<em><b>Size</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAPER__SIZE = eINSTANCE.getPaper_Size();

		/**
		 * The meta object literal for the '<em><b>Orientation</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAPER__ORIENTATION = eINSTANCE.getPaper_Orientation();

		/**
		 * The meta object literal for the '<em><b>Primary Unit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAPER__PRIMARY_UNIT = eINSTANCE.getPaper_PrimaryUnit();

		/**
		 * The meta object literal for the '<em><b>Show Numbers</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PAPER__SHOW_NUMBERS = eINSTANCE.getPaper_ShowNumbers();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.TechniqueLibraryImpl <em>Technique Library</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.TechniqueLibraryImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getTechniqueLibrary()
		 * @generated
		 */
		EClass TECHNIQUE_LIBRARY = eINSTANCE.getTechniqueLibrary();

		/**
		 * The meta object literal for the '<em><b>Situation</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TECHNIQUE_LIBRARY__SITUATION = eINSTANCE.getTechniqueLibrary_Situation();

		/**
		 * The meta object literal for the '<em><b>Facts</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TECHNIQUE_LIBRARY__FACTS = eINSTANCE.getTechniqueLibrary_Facts();

		/**
		 * The meta object literal for the '<em><b>Setups</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TECHNIQUE_LIBRARY__SETUPS = eINSTANCE.getTechniqueLibrary_Setups();

		/**
		 * The meta object literal for the '<em><b>Techniques</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TECHNIQUE_LIBRARY__TECHNIQUES = eINSTANCE.getTechniqueLibrary_Techniques();

		/**
		 * The meta object literal for the '<em><b>Bail Out</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TECHNIQUE_LIBRARY__BAIL_OUT = eINSTANCE.getTechniqueLibrary_BailOut();

		/**
		 * The meta object literal for the '<em><b>Stop Rules</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TECHNIQUE_LIBRARY__STOP_RULES = eINSTANCE.getTechniqueLibrary_StopRules();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.FactImpl <em>Fact</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.FactImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getFact()
		 * @generated
		 */
		EClass FACT = eINSTANCE.getFact();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FACT__ID = eINSTANCE.getFact_Id();

		/**
		 * The meta object literal for the '<em><b>Words</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute FACT__WORDS = eINSTANCE.getFact_Words();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.MoveImpl <em>Move</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.MoveImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getMove()
		 * @generated
		 */
		EClass MOVE = eINSTANCE.getMove();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOVE__ID = eINSTANCE.getMove_Id();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOVE__NAME = eINSTANCE.getMove_Name();

		/**
		 * The meta object literal for the '<em><b>Hazard</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOVE__HAZARD = eINSTANCE.getMove_Hazard();

		/**
		 * The meta object literal for the '<em><b>Roles</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MOVE__ROLES = eINSTANCE.getMove_Roles();

		/**
		 * The meta object literal for the '<em><b>Needs</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference MOVE__NEEDS = eINSTANCE.getMove_Needs();

		/**
		 * The meta object literal for the '<em><b>Setups</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute MOVE__SETUPS = eINSTANCE.getMove_Setups();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.CostedImpl <em>Costed</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.CostedImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getCosted()
		 * @generated
		 */
		EClass COSTED = eINSTANCE.getCosted();

		/**
		 * The meta object literal for the '<em><b>Minutes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COSTED__MINUTES = eINSTANCE.getCosted_Minutes();

		/**
		 * The meta object literal for the '<em><b>Contrast Ml</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COSTED__CONTRAST_ML = eINSTANCE.getCosted_ContrastMl();

		/**
		 * The meta object literal for the '<em><b>Dose Mgy</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COSTED__DOSE_MGY = eINSTANCE.getCosted_DoseMgy();

		/**
		 * The meta object literal for the '<em><b>Money</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute COSTED__MONEY = eINSTANCE.getCosted_Money();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.AdvisedImpl <em>Advised</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.AdvisedImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getAdvised()
		 * @generated
		 */
		EClass ADVISED = eINSTANCE.getAdvised();

		/**
		 * The meta object literal for the '<em><b>Changes</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ADVISED__CHANGES = eINSTANCE.getAdvised_Changes();

		/**
		 * The meta object literal for the '<em><b>Cautions</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ADVISED__CAUTIONS = eINSTANCE.getAdvised_Cautions();

		/**
		 * The meta object literal for the '<em><b>Off Label</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ADVISED__OFF_LABEL = eINSTANCE.getAdvised_OffLabel();

		/**
		 * The meta object literal for the '<em><b>Stop</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ADVISED__STOP = eINSTANCE.getAdvised_Stop();

		/**
		 * The meta object literal for the '<em><b>Published</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference ADVISED__PUBLISHED = eINSTANCE.getAdvised_Published();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.SetupImpl <em>Setup</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.SetupImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getSetup()
		 * @generated
		 */
		EClass SETUP = eINSTANCE.getSetup();

		/**
		 * The meta object literal for the '<em><b>Leaves</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SETUP__LEAVES = eINSTANCE.getSetup_Leaves();

		/**
		 * The meta object literal for the '<em><b>Exchanges Wire</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SETUP__EXCHANGES_WIRE = eINSTANCE.getSetup_ExchangesWire();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.TechniqueImpl <em>Technique</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.TechniqueImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getTechnique()
		 * @generated
		 */
		EClass TECHNIQUE = eINSTANCE.getTechnique();

		/**
		 * The meta object literal for the '<em><b>Axis</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TECHNIQUE__AXIS = eINSTANCE.getTechnique_Axis();

		/**
		 * The meta object literal for the '<em><b>After</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute TECHNIQUE__AFTER = eINSTANCE.getTechnique_After();

		/**
		 * The meta object literal for the '<em><b>Tries</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference TECHNIQUE__TRIES = eINSTANCE.getTechnique_Tries();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.RoleImpl <em>Role</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.RoleImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getRole()
		 * @generated
		 */
		EClass ROLE = eINSTANCE.getRole();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROLE__ID = eINSTANCE.getRole_Id();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROLE__NAME = eINSTANCE.getRole_Name();

		/**
		 * The meta object literal for the '<em><b>Kinds</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROLE__KINDS = eINSTANCE.getRole_Kinds();

		/**
		 * The meta object literal for the '<em><b>Devices</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROLE__DEVICES = eINSTANCE.getRole_Devices();

		/**
		 * The meta object literal for the '<em><b>Equipment</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROLE__EQUIPMENT = eINSTANCE.getRole_Equipment();

		/**
		 * The meta object literal for the '<em><b>Nominal Diameter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROLE__NOMINAL_DIAMETER = eINSTANCE.getRole_NominalDiameter();

		/**
		 * The meta object literal for the '<em><b>Nominal Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROLE__NOMINAL_LENGTH = eINSTANCE.getRole_NominalLength();

		/**
		 * The meta object literal for the '<em><b>Wire</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROLE__WIRE = eINSTANCE.getRole_Wire();

		/**
		 * The meta object literal for the '<em><b>To Vessel From</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROLE__TO_VESSEL_FROM = eINSTANCE.getRole_ToVesselFrom();

		/**
		 * The meta object literal for the '<em><b>To Vessel To</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROLE__TO_VESSEL_TO = eINSTANCE.getRole_ToVesselTo();

		/**
		 * The meta object literal for the '<em><b>Task</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROLE__TASK = eINSTANCE.getRole_Task();

		/**
		 * The meta object literal for the '<em><b>Carrier</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROLE__CARRIER = eINSTANCE.getRole_Carrier();

		/**
		 * The meta object literal for the '<em><b>Goal</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROLE__GOAL = eINSTANCE.getRole_Goal();

		/**
		 * The meta object literal for the '<em><b>Count</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROLE__COUNT = eINSTANCE.getRole_Count();

		/**
		 * The meta object literal for the '<em><b>Only If Wire Is Short</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ROLE__ONLY_IF_WIRE_IS_SHORT = eINSTANCE.getRole_OnlyIfWireIsShort();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.NeedImpl <em>Need</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.NeedImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getNeed()
		 * @generated
		 */
		EClass NEED = eINSTANCE.getNeed();

		/**
		 * The meta object literal for the '<em><b>Fact</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute NEED__FACT = eINSTANCE.getNeed_Fact();

		/**
		 * The meta object literal for the '<em><b>Vessel</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute NEED__VESSEL = eINSTANCE.getNeed_Vessel();

		/**
		 * The meta object literal for the '<em><b>Branch</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute NEED__BRANCH = eINSTANCE.getNeed_Branch();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.PlacementImpl <em>Placement</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.PlacementImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getPlacement()
		 * @generated
		 */
		EClass PLACEMENT = eINSTANCE.getPlacement();

		/**
		 * The meta object literal for the '<em><b>Slot</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLACEMENT__SLOT = eINSTANCE.getPlacement_Slot();

		/**
		 * The meta object literal for the '<em><b>Role</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLACEMENT__ROLE = eINSTANCE.getPlacement_Role();

		/**
		 * The meta object literal for the '<em><b>Protrusion</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLACEMENT__PROTRUSION = eINSTANCE.getPlacement_Protrusion();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.PlannedTryImpl <em>Planned Try</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.PlannedTryImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getPlannedTry()
		 * @generated
		 */
		EClass PLANNED_TRY = eINSTANCE.getPlannedTry();

		/**
		 * The meta object literal for the '<em><b>Successes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLANNED_TRY__SUCCESSES = eINSTANCE.getPlannedTry_Successes();

		/**
		 * The meta object literal for the '<em><b>Failures</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PLANNED_TRY__FAILURES = eINSTANCE.getPlannedTry_Failures();

		/**
		 * The meta object literal for the '<em><b>Prior</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference PLANNED_TRY__PRIOR = eINSTANCE.getPlannedTry_Prior();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.PriorImpl <em>Prior</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.PriorImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getPrior()
		 * @generated
		 */
		EClass PRIOR = eINSTANCE.getPrior();

		/**
		 * The meta object literal for the '<em><b>Successes</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRIOR__SUCCESSES = eINSTANCE.getPrior_Successes();

		/**
		 * The meta object literal for the '<em><b>Failures</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRIOR__FAILURES = eINSTANCE.getPrior_Failures();

		/**
		 * The meta object literal for the '<em><b>Label</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PRIOR__LABEL = eINSTANCE.getPrior_Label();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.PublishedImpl <em>Published</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.PublishedImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getPublished()
		 * @generated
		 */
		EClass PUBLISHED = eINSTANCE.getPublished();

		/**
		 * The meta object literal for the '<em><b>Text</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PUBLISHED__TEXT = eINSTANCE.getPublished_Text();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.StopRuleImpl <em>Stop Rule</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.StopRuleImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getStopRule()
		 * @generated
		 */
		EClass STOP_RULE = eINSTANCE.getStopRule();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOP_RULE__ID = eINSTANCE.getStopRule_Id();

		/**
		 * The meta object literal for the '<em><b>Words</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOP_RULE__WORDS = eINSTANCE.getStopRule_Words();

		/**
		 * The meta object literal for the '<em><b>Resource</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOP_RULE__RESOURCE = eINSTANCE.getStopRule_Resource();

		/**
		 * The meta object literal for the '<em><b>Limit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOP_RULE__LIMIT = eINSTANCE.getStopRule_Limit();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.CaseDocumentImpl <em>Case Document</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.CaseDocumentImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getCaseDocument()
		 * @generated
		 */
		EClass CASE_DOCUMENT = eINSTANCE.getCaseDocument();

		/**
		 * The meta object literal for the '<em><b>Libraries</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CASE_DOCUMENT__LIBRARIES = eINSTANCE.getCaseDocument_Libraries();

		/**
		 * The meta object literal for the '<em><b>Rules</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CASE_DOCUMENT__RULES = eINSTANCE.getCaseDocument_Rules();

		/**
		 * The meta object literal for the '<em><b>Techniques</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CASE_DOCUMENT__TECHNIQUES = eINSTANCE.getCaseDocument_Techniques();

		/**
		 * The meta object literal for the '<em><b>Shelf</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CASE_DOCUMENT__SHELF = eINSTANCE.getCaseDocument_Shelf();

		/**
		 * The meta object literal for the '<em><b>Day</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CASE_DOCUMENT__DAY = eINSTANCE.getCaseDocument_Day();

		/**
		 * The meta object literal for the '<em><b>Access</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CASE_DOCUMENT__ACCESS = eINSTANCE.getCaseDocument_Access();

		/**
		 * The meta object literal for the '<em><b>System</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CASE_DOCUMENT__SYSTEM = eINSTANCE.getCaseDocument_System();

		/**
		 * The meta object literal for the '<em><b>Path</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CASE_DOCUMENT__PATH = eINSTANCE.getCaseDocument_Path();

		/**
		 * The meta object literal for the '<em><b>Lesion</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CASE_DOCUMENT__LESION = eINSTANCE.getCaseDocument_Lesion();

		/**
		 * The meta object literal for the '<em><b>Branch</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CASE_DOCUMENT__BRANCH = eINSTANCE.getCaseDocument_Branch();

		/**
		 * The meta object literal for the '<em><b>Deliver</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CASE_DOCUMENT__DELIVER = eINSTANCE.getCaseDocument_Deliver();

		/**
		 * The meta object literal for the '<em><b>Facts</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CASE_DOCUMENT__FACTS = eINSTANCE.getCaseDocument_Facts();

		/**
		 * The meta object literal for the '<em><b>Measures</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CASE_DOCUMENT__MEASURES = eINSTANCE.getCaseDocument_Measures();

		/**
		 * The meta object literal for the '<em><b>Patient</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CASE_DOCUMENT__PATIENT = eINSTANCE.getCaseDocument_Patient();

		/**
		 * The meta object literal for the '<em><b>Aim</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CASE_DOCUMENT__AIM = eINSTANCE.getCaseDocument_Aim();

		/**
		 * The meta object literal for the '<em><b>Spent</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CASE_DOCUMENT__SPENT = eINSTANCE.getCaseDocument_Spent();

		/**
		 * The meta object literal for the '<em><b>Log</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CASE_DOCUMENT__LOG = eINSTANCE.getCaseDocument_Log();

		/**
		 * The meta object literal for the '<em><b>Closing</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CASE_DOCUMENT__CLOSING = eINSTANCE.getCaseDocument_Closing();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.AccessImpl <em>Access</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.AccessImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getAccess()
		 * @generated
		 */
		EClass ACCESS = eINSTANCE.getAccess();

		/**
		 * The meta object literal for the '<em><b>Site</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACCESS__SITE = eINSTANCE.getAccess_Site();

		/**
		 * The meta object literal for the '<em><b>Vessel</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute ACCESS__VESSEL = eINSTANCE.getAccess_Vessel();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.SystemInPlaceImpl <em>System In Place</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.SystemInPlaceImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getSystemInPlace()
		 * @generated
		 */
		EClass SYSTEM_IN_PLACE = eINSTANCE.getSystemInPlace();

		/**
		 * The meta object literal for the '<em><b>Sheath</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SYSTEM_IN_PLACE__SHEATH = eINSTANCE.getSystemInPlace_Sheath();

		/**
		 * The meta object literal for the '<em><b>Valve</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SYSTEM_IN_PLACE__VALVE = eINSTANCE.getSystemInPlace_Valve();

		/**
		 * The meta object literal for the '<em><b>Guide</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SYSTEM_IN_PLACE__GUIDE = eINSTANCE.getSystemInPlace_Guide();

		/**
		 * The meta object literal for the '<em><b>Extension</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SYSTEM_IN_PLACE__EXTENSION = eINSTANCE.getSystemInPlace_Extension();

		/**
		 * The meta object literal for the '<em><b>Microcatheter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SYSTEM_IN_PLACE__MICROCATHETER = eINSTANCE.getSystemInPlace_Microcatheter();

		/**
		 * The meta object literal for the '<em><b>Main Wire</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SYSTEM_IN_PLACE__MAIN_WIRE = eINSTANCE.getSystemInPlace_MainWire();

		/**
		 * The meta object literal for the '<em><b>Second Wire</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SYSTEM_IN_PLACE__SECOND_WIRE = eINSTANCE.getSystemInPlace_SecondWire();

		/**
		 * The meta object literal for the '<em><b>Anchor</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SYSTEM_IN_PLACE__ANCHOR = eINSTANCE.getSystemInPlace_Anchor();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.SideBranchImpl <em>Side Branch</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.SideBranchImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getSideBranch()
		 * @generated
		 */
		EClass SIDE_BRANCH = eINSTANCE.getSideBranch();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIDE_BRANCH__NAME = eINSTANCE.getSideBranch_Name();

		/**
		 * The meta object literal for the '<em><b>At</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIDE_BRANCH__AT = eINSTANCE.getSideBranch_At();

		/**
		 * The meta object literal for the '<em><b>Diameter</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIDE_BRANCH__DIAMETER = eINSTANCE.getSideBranch_Diameter();

		/**
		 * The meta object literal for the '<em><b>Depth</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SIDE_BRANCH__DEPTH = eINSTANCE.getSideBranch_Depth();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.StatedFactImpl <em>Stated Fact</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.StatedFactImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getStatedFact()
		 * @generated
		 */
		EClass STATED_FACT = eINSTANCE.getStatedFact();

		/**
		 * The meta object literal for the '<em><b>Fact</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STATED_FACT__FACT = eINSTANCE.getStatedFact_Fact();

		/**
		 * The meta object literal for the '<em><b>Holds</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STATED_FACT__HOLDS = eINSTANCE.getStatedFact_Holds();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.LesionMeasuresImpl <em>Lesion Measures</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.LesionMeasuresImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getLesionMeasures()
		 * @generated
		 */
		EClass LESION_MEASURES = eINSTANCE.getLesionMeasures();

		/**
		 * The meta object literal for the '<em><b>Blunt Stump</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LESION_MEASURES__BLUNT_STUMP = eINSTANCE.getLesionMeasures_BluntStump();

		/**
		 * The meta object literal for the '<em><b>Calcification</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LESION_MEASURES__CALCIFICATION = eINSTANCE.getLesionMeasures_Calcification();

		/**
		 * The meta object literal for the '<em><b>Bend Degrees</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LESION_MEASURES__BEND_DEGREES = eINSTANCE.getLesionMeasures_BendDegrees();

		/**
		 * The meta object literal for the '<em><b>Failed Before</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LESION_MEASURES__FAILED_BEFORE = eINSTANCE.getLesionMeasures_FailedBefore();

		/**
		 * The meta object literal for the '<em><b>Occlusion Months</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LESION_MEASURES__OCCLUSION_MONTHS = eINSTANCE.getLesionMeasures_OcclusionMonths();

		/**
		 * The meta object literal for the '<em><b>Calcium Degrees</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LESION_MEASURES__CALCIUM_DEGREES = eINSTANCE.getLesionMeasures_CalciumDegrees();

		/**
		 * The meta object literal for the '<em><b>Calcium Thickness</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LESION_MEASURES__CALCIUM_THICKNESS = eINSTANCE.getLesionMeasures_CalciumThickness();

		/**
		 * The meta object literal for the '<em><b>Calcium Length</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LESION_MEASURES__CALCIUM_LENGTH = eINSTANCE.getLesionMeasures_CalciumLength();

		/**
		 * The meta object literal for the '<em><b>Traits</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LESION_MEASURES__TRAITS = eINSTANCE.getLesionMeasures_Traits();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.PatientFiguresImpl <em>Patient Figures</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.PatientFiguresImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getPatientFigures()
		 * @generated
		 */
		EClass PATIENT_FIGURES = eINSTANCE.getPatientFigures();

		/**
		 * The meta object literal for the '<em><b>Age</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PATIENT_FIGURES__AGE = eINSTANCE.getPatientFigures_Age();

		/**
		 * The meta object literal for the '<em><b>Weight</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PATIENT_FIGURES__WEIGHT = eINSTANCE.getPatientFigures_Weight();

		/**
		 * The meta object literal for the '<em><b>Creatinine</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PATIENT_FIGURES__CREATININE = eINSTANCE.getPatientFigures_Creatinine();

		/**
		 * The meta object literal for the '<em><b>Sex</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute PATIENT_FIGURES__SEX = eINSTANCE.getPatientFigures_Sex();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.CaseAimImpl <em>Case Aim</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.CaseAimImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getCaseAim()
		 * @generated
		 */
		EClass CASE_AIM = eINSTANCE.getCaseAim();

		/**
		 * The meta object literal for the '<em><b>Objective</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CASE_AIM__OBJECTIVE = eINSTANCE.getCaseAim_Objective();

		/**
		 * The meta object literal for the '<em><b>Stopping Cost</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CASE_AIM__STOPPING_COST = eINSTANCE.getCaseAim_StoppingCost();

		/**
		 * The meta object literal for the '<em><b>Tiers First</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CASE_AIM__TIERS_FIRST = eINSTANCE.getCaseAim_TiersFirst();

		/**
		 * The meta object literal for the '<em><b>One New Risk AStep</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CASE_AIM__ONE_NEW_RISK_ASTEP = eINSTANCE.getCaseAim_OneNewRiskAStep();

		/**
		 * The meta object literal for the '<em><b>Same Axis Discount</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CASE_AIM__SAME_AXIS_DISCOUNT = eINSTANCE.getCaseAim_SameAxisDiscount();

		/**
		 * The meta object literal for the '<em><b>Budgets Limit</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CASE_AIM__BUDGETS_LIMIT = eINSTANCE.getCaseAim_BudgetsLimit();

		/**
		 * The meta object literal for the '<em><b>Budgets</b></em>' containment reference feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CASE_AIM__BUDGETS = eINSTANCE.getCaseAim_Budgets();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.CostsImpl <em>Costs</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.CostsImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getCosts()
		 * @generated
		 */
		EClass COSTS = eINSTANCE.getCosts();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.LoggedAttemptImpl <em>Logged Attempt</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.LoggedAttemptImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getLoggedAttempt()
		 * @generated
		 */
		EClass LOGGED_ATTEMPT = eINSTANCE.getLoggedAttempt();

		/**
		 * The meta object literal for the '<em><b>Move</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOGGED_ATTEMPT__MOVE = eINSTANCE.getLoggedAttempt_Move();

		/**
		 * The meta object literal for the '<em><b>Outcome</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOGGED_ATTEMPT__OUTCOME = eINSTANCE.getLoggedAttempt_Outcome();

		/**
		 * The meta object literal for the '<em><b>Units</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference LOGGED_ATTEMPT__UNITS = eINSTANCE.getLoggedAttempt_Units();

		/**
		 * The meta object literal for the '<em><b>Remark</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute LOGGED_ATTEMPT__REMARK = eINSTANCE.getLoggedAttempt_Remark();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.UsedUnitImpl <em>Used Unit</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.UsedUnitImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getUsedUnit()
		 * @generated
		 */
		EClass USED_UNIT = eINSTANCE.getUsedUnit();

		/**
		 * The meta object literal for the '<em><b>Role</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute USED_UNIT__ROLE = eINSTANCE.getUsedUnit_Role();

		/**
		 * The meta object literal for the '<em><b>Item</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute USED_UNIT__ITEM = eINSTANCE.getUsedUnit_Item();

		/**
		 * The meta object literal for the '<em><b>Lot</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute USED_UNIT__LOT = eINSTANCE.getUsedUnit_Lot();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.ClosingImpl <em>Closing</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.ClosingImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getClosing()
		 * @generated
		 */
		EClass CLOSING = eINSTANCE.getClosing();

		/**
		 * The meta object literal for the '<em><b>Closed</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLOSING__CLOSED = eINSTANCE.getClosing_Closed();

		/**
		 * The meta object literal for the '<em><b>Ended</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLOSING__ENDED = eINSTANCE.getClosing_Ended();

		/**
		 * The meta object literal for the '<em><b>Plan</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CLOSING__PLAN = eINSTANCE.getClosing_Plan();

		/**
		 * The meta object literal for the '<em><b>Devices</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CLOSING__DEVICES = eINSTANCE.getClosing_Devices();

		/**
		 * The meta object literal for the '<em><b>Hashes</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference CLOSING__HASHES = eINSTANCE.getClosing_Hashes();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.ClosedStepImpl <em>Closed Step</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.ClosedStepImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getClosedStep()
		 * @generated
		 */
		EClass CLOSED_STEP = eINSTANCE.getClosedStep();

		/**
		 * The meta object literal for the '<em><b>Move</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLOSED_STEP__MOVE = eINSTANCE.getClosedStep_Move();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLOSED_STEP__NAME = eINSTANCE.getClosedStep_Name();

		/**
		 * The meta object literal for the '<em><b>Devices</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLOSED_STEP__DEVICES = eINSTANCE.getClosedStep_Devices();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.ClosedDeviceImpl <em>Closed Device</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.ClosedDeviceImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getClosedDevice()
		 * @generated
		 */
		EClass CLOSED_DEVICE = eINSTANCE.getClosedDevice();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLOSED_DEVICE__ID = eINSTANCE.getClosedDevice_Id();

		/**
		 * The meta object literal for the '<em><b>Item</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLOSED_DEVICE__ITEM = eINSTANCE.getClosedDevice_Item();

		/**
		 * The meta object literal for the '<em><b>Lot</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLOSED_DEVICE__LOT = eINSTANCE.getClosedDevice_Lot();

		/**
		 * The meta object literal for the '<em><b>Expiry</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute CLOSED_DEVICE__EXPIRY = eINSTANCE.getClosedDevice_Expiry();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.DocumentHashImpl <em>Document Hash</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.DocumentHashImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getDocumentHash()
		 * @generated
		 */
		EClass DOCUMENT_HASH = eINSTANCE.getDocumentHash();

		/**
		 * The meta object literal for the '<em><b>File</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DOCUMENT_HASH__FILE = eINSTANCE.getDocumentHash_File();

		/**
		 * The meta object literal for the '<em><b>Revision</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DOCUMENT_HASH__REVISION = eINSTANCE.getDocumentHash_Revision();

		/**
		 * The meta object literal for the '<em><b>Sha256</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute DOCUMENT_HASH__SHA256 = eINSTANCE.getDocumentHash_Sha256();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.ShelfDocumentImpl <em>Shelf Document</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.ShelfDocumentImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getShelfDocument()
		 * @generated
		 */
		EClass SHELF_DOCUMENT = eINSTANCE.getShelfDocument();

		/**
		 * The meta object literal for the '<em><b>Libraries</b></em>' attribute list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHELF_DOCUMENT__LIBRARIES = eINSTANCE.getShelfDocument_Libraries();

		/**
		 * The meta object literal for the '<em><b>Currency</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute SHELF_DOCUMENT__CURRENCY = eINSTANCE.getShelfDocument_Currency();

		/**
		 * The meta object literal for the '<em><b>Items</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference SHELF_DOCUMENT__ITEMS = eINSTANCE.getShelfDocument_Items();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.StockItemImpl <em>Stock Item</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.StockItemImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getStockItem()
		 * @generated
		 */
		EClass STOCK_ITEM = eINSTANCE.getStockItem();

		/**
		 * The meta object literal for the '<em><b>Id</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOCK_ITEM__ID = eINSTANCE.getStockItem_Id();

		/**
		 * The meta object literal for the '<em><b>Name</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOCK_ITEM__NAME = eINSTANCE.getStockItem_Name();

		/**
		 * The meta object literal for the '<em><b>Device</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOCK_ITEM__DEVICE = eINSTANCE.getStockItem_Device();

		/**
		 * The meta object literal for the '<em><b>Equipment</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOCK_ITEM__EQUIPMENT = eINSTANCE.getStockItem_Equipment();

		/**
		 * The meta object literal for the '<em><b>Code</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOCK_ITEM__CODE = eINSTANCE.getStockItem_Code();

		/**
		 * The meta object literal for the '<em><b>Par Level</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOCK_ITEM__PAR_LEVEL = eINSTANCE.getStockItem_ParLevel();

		/**
		 * The meta object literal for the '<em><b>Price</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOCK_ITEM__PRICE = eINSTANCE.getStockItem_Price();

		/**
		 * The meta object literal for the '<em><b>Lots</b></em>' containment reference list feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EReference STOCK_ITEM__LOTS = eINSTANCE.getStockItem_Lots();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.impl.StockLotImpl <em>Stock Lot</em>}' class.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.impl.StockLotImpl
		 * @see org.ferrule.model.impl.ModelPackageImpl#getStockLot()
		 * @generated
		 */
		EClass STOCK_LOT = eINSTANCE.getStockLot();

		/**
		 * The meta object literal for the '<em><b>Lot</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOCK_LOT__LOT = eINSTANCE.getStockLot_Lot();

		/**
		 * The meta object literal for the '<em><b>Expiry</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOCK_LOT__EXPIRY = eINSTANCE.getStockLot_Expiry();

		/**
		 * The meta object literal for the '<em><b>Quantity</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOCK_LOT__QUANTITY = eINSTANCE.getStockLot_Quantity();

		/**
		 * The meta object literal for the '<em><b>Location</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOCK_LOT__LOCATION = eINSTANCE.getStockLot_Location();

		/**
		 * The meta object literal for the '<em><b>Serial</b></em>' attribute feature.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @generated
		 */
		EAttribute STOCK_LOT__SERIAL = eINSTANCE.getStockLot_Serial();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.SourceKind <em>Source Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.SourceKind
		 * @see org.ferrule.model.impl.ModelPackageImpl#getSourceKind()
		 * @generated
		 */
		EEnum SOURCE_KIND = eINSTANCE.getSourceKind();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.DeviceKind <em>Device Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.DeviceKind
		 * @see org.ferrule.model.impl.ModelPackageImpl#getDeviceKind()
		 * @generated
		 */
		EEnum DEVICE_KIND = eINSTANCE.getDeviceKind();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.LumenUse <em>Lumen Use</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.LumenUse
		 * @see org.ferrule.model.impl.ModelPackageImpl#getLumenUse()
		 * @generated
		 */
		EEnum LUMEN_USE = eINSTANCE.getLumenUse();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.LumenOpening <em>Lumen Opening</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.LumenOpening
		 * @see org.ferrule.model.impl.ModelPackageImpl#getLumenOpening()
		 * @generated
		 */
		EEnum LUMEN_OPENING = eINSTANCE.getLumenOpening();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.CutterType <em>Cutter Type</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.CutterType
		 * @see org.ferrule.model.impl.ModelPackageImpl#getCutterType()
		 * @generated
		 */
		EEnum CUTTER_TYPE = eINSTANCE.getCutterType();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.TransducerType <em>Transducer Type</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.TransducerType
		 * @see org.ferrule.model.impl.ModelPackageImpl#getTransducerType()
		 * @generated
		 */
		EEnum TRANSDUCER_TYPE = eINSTANCE.getTransducerType();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.ClaimType <em>Claim Type</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.ClaimType
		 * @see org.ferrule.model.impl.ModelPackageImpl#getClaimType()
		 * @generated
		 */
		EEnum CLAIM_TYPE = eINSTANCE.getClaimType();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.Phase <em>Phase</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.Phase
		 * @see org.ferrule.model.impl.ModelPackageImpl#getPhase()
		 * @generated
		 */
		EEnum PHASE = eINSTANCE.getPhase();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.BenchOutcome <em>Bench Outcome</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.BenchOutcome
		 * @see org.ferrule.model.impl.ModelPackageImpl#getBenchOutcome()
		 * @generated
		 */
		EEnum BENCH_OUTCOME = eINSTANCE.getBenchOutcome();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.FigureClass <em>Figure Class</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.FigureClass
		 * @see org.ferrule.model.impl.ModelPackageImpl#getFigureClass()
		 * @generated
		 */
		EEnum FIGURE_CLASS = eINSTANCE.getFigureClass();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.FlowUse <em>Flow Use</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.FlowUse
		 * @see org.ferrule.model.impl.ModelPackageImpl#getFlowUse()
		 * @generated
		 */
		EEnum FLOW_USE = eINSTANCE.getFlowUse();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.AllowancePurpose <em>Allowance Purpose</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.AllowancePurpose
		 * @see org.ferrule.model.impl.ModelPackageImpl#getAllowancePurpose()
		 * @generated
		 */
		EEnum ALLOWANCE_PURPOSE = eINSTANCE.getAllowancePurpose();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.RatioUse <em>Ratio Use</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.RatioUse
		 * @see org.ferrule.model.impl.ModelPackageImpl#getRatioUse()
		 * @generated
		 */
		EEnum RATIO_USE = eINSTANCE.getRatioUse();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.Grouping <em>Grouping</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.Grouping
		 * @see org.ferrule.model.impl.ModelPackageImpl#getGrouping()
		 * @generated
		 */
		EEnum GROUPING = eINSTANCE.getGrouping();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.Sorting <em>Sorting</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.Sorting
		 * @see org.ferrule.model.impl.ModelPackageImpl#getSorting()
		 * @generated
		 */
		EEnum SORTING = eINSTANCE.getSorting();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.Direction <em>Direction</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.Direction
		 * @see org.ferrule.model.impl.ModelPackageImpl#getDirection()
		 * @generated
		 */
		EEnum DIRECTION = eINSTANCE.getDirection();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.BendPlace <em>Bend Place</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.BendPlace
		 * @see org.ferrule.model.impl.ModelPackageImpl#getBendPlace()
		 * @generated
		 */
		EEnum BEND_PLACE = eINSTANCE.getBendPlace();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.PaperSize <em>Paper Size</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.PaperSize
		 * @see org.ferrule.model.impl.ModelPackageImpl#getPaperSize()
		 * @generated
		 */
		EEnum PAPER_SIZE = eINSTANCE.getPaperSize();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.Orientation <em>Orientation</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.Orientation
		 * @see org.ferrule.model.impl.ModelPackageImpl#getOrientation()
		 * @generated
		 */
		EEnum ORIENTATION = eINSTANCE.getOrientation();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.PrimaryUnit <em>Primary Unit</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.PrimaryUnit
		 * @see org.ferrule.model.impl.ModelPackageImpl#getPrimaryUnit()
		 * @generated
		 */
		EEnum PRIMARY_UNIT = eINSTANCE.getPrimaryUnit();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.ShownNumbers <em>Shown Numbers</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.ShownNumbers
		 * @see org.ferrule.model.impl.ModelPackageImpl#getShownNumbers()
		 * @generated
		 */
		EEnum SHOWN_NUMBERS = eINSTANCE.getShownNumbers();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.TechniqueAxis <em>Technique Axis</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.TechniqueAxis
		 * @see org.ferrule.model.impl.ModelPackageImpl#getTechniqueAxis()
		 * @generated
		 */
		EEnum TECHNIQUE_AXIS = eINSTANCE.getTechniqueAxis();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.Hazard <em>Hazard</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.Hazard
		 * @see org.ferrule.model.impl.ModelPackageImpl#getHazard()
		 * @generated
		 */
		EEnum HAZARD = eINSTANCE.getHazard();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.RoleTask <em>Role Task</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.RoleTask
		 * @see org.ferrule.model.impl.ModelPackageImpl#getRoleTask()
		 * @generated
		 */
		EEnum ROLE_TASK = eINSTANCE.getRoleTask();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.Carrier <em>Carrier</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.Carrier
		 * @see org.ferrule.model.impl.ModelPackageImpl#getCarrier()
		 * @generated
		 */
		EEnum CARRIER = eINSTANCE.getCarrier();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.RoleGoal <em>Role Goal</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.RoleGoal
		 * @see org.ferrule.model.impl.ModelPackageImpl#getRoleGoal()
		 * @generated
		 */
		EEnum ROLE_GOAL = eINSTANCE.getRoleGoal();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.SystemSlot <em>System Slot</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.SystemSlot
		 * @see org.ferrule.model.impl.ModelPackageImpl#getSystemSlot()
		 * @generated
		 */
		EEnum SYSTEM_SLOT = eINSTANCE.getSystemSlot();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.ResourceKind <em>Resource Kind</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.ResourceKind
		 * @see org.ferrule.model.impl.ModelPackageImpl#getResourceKind()
		 * @generated
		 */
		EEnum RESOURCE_KIND = eINSTANCE.getResourceKind();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.AttemptOutcome <em>Attempt Outcome</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.AttemptOutcome
		 * @see org.ferrule.model.impl.ModelPackageImpl#getAttemptOutcome()
		 * @generated
		 */
		EEnum ATTEMPT_OUTCOME = eINSTANCE.getAttemptOutcome();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.CaseEnd <em>Case End</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.CaseEnd
		 * @see org.ferrule.model.impl.ModelPackageImpl#getCaseEnd()
		 * @generated
		 */
		EEnum CASE_END = eINSTANCE.getCaseEnd();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.Sex <em>Sex</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.Sex
		 * @see org.ferrule.model.impl.ModelPackageImpl#getSex()
		 * @generated
		 */
		EEnum SEX = eINSTANCE.getSex();

		/**
		 * The meta object literal for the '{@link org.ferrule.model.LesionTrait <em>Lesion Trait</em>}' enum.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.model.LesionTrait
		 * @see org.ferrule.model.impl.ModelPackageImpl#getLesionTrait()
		 * @generated
		 */
		EEnum LESION_TRAIT = eINSTANCE.getLesionTrait();

		/**
		 * The meta object literal for the '<em>Dimension</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.quantity.Dimension
		 * @see org.ferrule.model.impl.ModelPackageImpl#getDimension()
		 * @generated
		 */
		EDataType DIMENSION = eINSTANCE.getDimension();

		/**
		 * The meta object literal for the '<em>Pressure</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.quantity.Pressure
		 * @see org.ferrule.model.impl.ModelPackageImpl#getPressure()
		 * @generated
		 */
		EDataType PRESSURE = eINSTANCE.getPressure();

		/**
		 * The meta object literal for the '<em>Offset</em>' data type.
		 * <!-- begin-user-doc -->
		 * <!-- end-user-doc -->
		 * @see org.ferrule.quantity.Offset
		 * @see org.ferrule.model.impl.ModelPackageImpl#getOffset()
		 * @generated
		 */
		EDataType OFFSET = eINSTANCE.getOffset();

	}

} //ModelPackage
