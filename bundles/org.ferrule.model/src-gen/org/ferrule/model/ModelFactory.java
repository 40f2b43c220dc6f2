/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.eclipse.emf.ecore.EFactory;

/**
 * <!-- begin-user-doc -->
 * The <b>Factory</b> for the model.
 * It provides a create method for each non-abstract class of the model.
 * <!-- end-user-doc -->
 * @see org.ferrule.model.ModelPackage
 * @generated
 */
public interface ModelFactory extends EFactory
{
	/**
	 * The singleton instance of the factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	ModelFactory eINSTANCE = org.ferrule.model.impl.ModelFactoryImpl.init();

	/**
	 * Returns a new object of class '<em>Extra Key</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Extra Key</em>'.
	 * @generated
	 */
	ExtraKey createExtraKey();

	/**
	 * Returns a new object of class '<em>Source</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Source</em>'.
	 * @generated
	 */
	Source createSource();

	/**
	 * Returns a new object of class '<em>Device Library</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Device Library</em>'.
	 * @generated
	 */
	DeviceLibrary createDeviceLibrary();

	/**
	 * Returns a new object of class '<em>Device Line</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Device Line</em>'.
	 * @generated
	 */
	DeviceLine createDeviceLine();

	/**
	 * Returns a new object of class '<em>Device</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Device</em>'.
	 * @generated
	 */
	Device createDevice();

	/**
	 * Returns a new object of class '<em>Shaft Section</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Shaft Section</em>'.
	 * @generated
	 */
	ShaftSection createShaftSection();

	/**
	 * Returns a new object of class '<em>Oval</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Oval</em>'.
	 * @generated
	 */
	Oval createOval();

	/**
	 * Returns a new object of class '<em>Disc</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Disc</em>'.
	 * @generated
	 */
	Disc createDisc();

	/**
	 * Returns a new object of class '<em>Lumen</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Lumen</em>'.
	 * @generated
	 */
	Lumen createLumen();

	/**
	 * Returns a new object of class '<em>Lumen Section</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Lumen Section</em>'.
	 * @generated
	 */
	LumenSection createLumenSection();

	/**
	 * Returns a new object of class '<em>Marker</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Marker</em>'.
	 * @generated
	 */
	Marker createMarker();

	/**
	 * Returns a new object of class '<em>Balloon</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Balloon</em>'.
	 * @generated
	 */
	Balloon createBalloon();

	/**
	 * Returns a new object of class '<em>Compliance Row</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Compliance Row</em>'.
	 * @generated
	 */
	ComplianceRow createComplianceRow();

	/**
	 * Returns a new object of class '<em>Stent</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Stent</em>'.
	 * @generated
	 */
	Stent createStent();

	/**
	 * Returns a new object of class '<em>Cutter</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Cutter</em>'.
	 * @generated
	 */
	Cutter createCutter();

	/**
	 * Returns a new object of class '<em>Transducer</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Transducer</em>'.
	 * @generated
	 */
	Transducer createTransducer();

	/**
	 * Returns a new object of class '<em>Wire Traits</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Wire Traits</em>'.
	 * @generated
	 */
	WireTraits createWireTraits();

	/**
	 * Returns a new object of class '<em>Claim</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Claim</em>'.
	 * @generated
	 */
	Claim createClaim();

	/**
	 * Returns a new object of class '<em>Bench Result</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Bench Result</em>'.
	 * @generated
	 */
	BenchResult createBenchResult();

	/**
	 * Returns a new object of class '<em>Rule Set</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Rule Set</em>'.
	 * @generated
	 */
	RuleSet createRuleSet();

	/**
	 * Returns a new object of class '<em>Span</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Span</em>'.
	 * @generated
	 */
	Span createSpan();

	/**
	 * Returns a new object of class '<em>Clearance Rule</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Clearance Rule</em>'.
	 * @generated
	 */
	ClearanceRule createClearanceRule();

	/**
	 * Returns a new object of class '<em>After Use Rule</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>After Use Rule</em>'.
	 * @generated
	 */
	AfterUseRule createAfterUseRule();

	/**
	 * Returns a new object of class '<em>Flow Limit</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Flow Limit</em>'.
	 * @generated
	 */
	FlowLimit createFlowLimit();

	/**
	 * Returns a new object of class '<em>Allowance</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Allowance</em>'.
	 * @generated
	 */
	Allowance createAllowance();

	/**
	 * Returns a new object of class '<em>Ratio Band</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Ratio Band</em>'.
	 * @generated
	 */
	RatioBand createRatioBand();

	/**
	 * Returns a new object of class '<em>Chance Limit</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Chance Limit</em>'.
	 * @generated
	 */
	ChanceLimit createChanceLimit();

	/**
	 * Returns a new object of class '<em>Fit Chart</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Fit Chart</em>'.
	 * @generated
	 */
	FitChart createFitChart();

	/**
	 * Returns a new object of class '<em>Sign Off</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Sign Off</em>'.
	 * @generated
	 */
	SignOff createSignOff();

	/**
	 * Returns a new object of class '<em>Signed Row</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Signed Row</em>'.
	 * @generated
	 */
	SignedRow createSignedRow();

	/**
	 * Returns a new object of class '<em>Axis</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Axis</em>'.
	 * @generated
	 */
	Axis createAxis();

	/**
	 * Returns a new object of class '<em>Conditions</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Conditions</em>'.
	 * @generated
	 */
	Conditions createConditions();

	/**
	 * Returns a new object of class '<em>Occupant</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Occupant</em>'.
	 * @generated
	 */
	Occupant createOccupant();

	/**
	 * Returns a new object of class '<em>Through Extension</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Through Extension</em>'.
	 * @generated
	 */
	ThroughExtension createThroughExtension();

	/**
	 * Returns a new object of class '<em>Bend</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Bend</em>'.
	 * @generated
	 */
	Bend createBend();

	/**
	 * Returns a new object of class '<em>Vessel Path</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Vessel Path</em>'.
	 * @generated
	 */
	VesselPath createVesselPath();

	/**
	 * Returns a new object of class '<em>Vessel Segment</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Vessel Segment</em>'.
	 * @generated
	 */
	VesselSegment createVesselSegment();

	/**
	 * Returns a new object of class '<em>Lesion</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Lesion</em>'.
	 * @generated
	 */
	Lesion createLesion();

	/**
	 * Returns a new object of class '<em>Paper</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Paper</em>'.
	 * @generated
	 */
	Paper createPaper();

	/**
	 * Returns a new object of class '<em>Technique Library</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Technique Library</em>'.
	 * @generated
	 */
	TechniqueLibrary createTechniqueLibrary();

	/**
	 * Returns a new object of class '<em>Fact</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Fact</em>'.
	 * @generated
	 */
	Fact createFact();

	/**
	 * Returns a new object of class '<em>Setup</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Setup</em>'.
	 * @generated
	 */
	Setup createSetup();

	/**
	 * Returns a new object of class '<em>Technique</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Technique</em>'.
	 * @generated
	 */
	Technique createTechnique();

	/**
	 * Returns a new object of class '<em>Role</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Role</em>'.
	 * @generated
	 */
	Role createRole();

	/**
	 * Returns a new object of class '<em>Need</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Need</em>'.
	 * @generated
	 */
	Need createNeed();

	/**
	 * Returns a new object of class '<em>Placement</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Placement</em>'.
	 * @generated
	 */
	Placement createPlacement();

	/**
	 * Returns a new object of class '<em>Planned Try</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Planned Try</em>'.
	 * @generated
	 */
	PlannedTry createPlannedTry();

	/**
	 * Returns a new object of class '<em>Prior</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Prior</em>'.
	 * @generated
	 */
	Prior createPrior();

	/**
	 * Returns a new object of class '<em>Published</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Published</em>'.
	 * @generated
	 */
	Published createPublished();

	/**
	 * Returns a new object of class '<em>Stop Rule</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Stop Rule</em>'.
	 * @generated
	 */
	StopRule createStopRule();

	/**
	 * Returns a new object of class '<em>Case Document</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Case Document</em>'.
	 * @generated
	 */
	CaseDocument createCaseDocument();

	/**
	 * Returns a new object of class '<em>Access</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Access</em>'.
	 * @generated
	 */
	Access createAccess();

	/**
	 * Returns a new object of class '<em>System In Place</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>System In Place</em>'.
	 * @generated
	 */
	SystemInPlace createSystemInPlace();

	/**
	 * Returns a new object of class '<em>Side Branch</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Side Branch</em>'.
	 * @generated
	 */
	SideBranch createSideBranch();

	/**
	 * Returns a new object of class '<em>Stated Fact</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Stated Fact</em>'.
	 * @generated
	 */
	StatedFact createStatedFact();

	/**
	 * Returns a new object of class '<em>Lesion Measures</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Lesion Measures</em>'.
	 * @generated
	 */
	LesionMeasures createLesionMeasures();

	/**
	 * Returns a new object of class '<em>Patient Figures</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Patient Figures</em>'.
	 * @generated
	 */
	PatientFigures createPatientFigures();

	/**
	 * Returns a new object of class '<em>Case Aim</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Case Aim</em>'.
	 * @generated
	 */
	CaseAim createCaseAim();

	/**
	 * Returns a new object of class '<em>Costs</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Costs</em>'.
	 * @generated
	 */
	Costs createCosts();

	/**
	 * Returns a new object of class '<em>Logged Attempt</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Logged Attempt</em>'.
	 * @generated
	 */
	LoggedAttempt createLoggedAttempt();

	/**
	 * Returns a new object of class '<em>Used Unit</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Used Unit</em>'.
	 * @generated
	 */
	UsedUnit createUsedUnit();

	/**
	 * Returns a new object of class '<em>Closing</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Closing</em>'.
	 * @generated
	 */
	Closing createClosing();

	/**
	 * Returns a new object of class '<em>Closed Step</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Closed Step</em>'.
	 * @generated
	 */
	ClosedStep createClosedStep();

	/**
	 * Returns a new object of class '<em>Closed Device</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Closed Device</em>'.
	 * @generated
	 */
	ClosedDevice createClosedDevice();

	/**
	 * Returns a new object of class '<em>Document Hash</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Document Hash</em>'.
	 * @generated
	 */
	DocumentHash createDocumentHash();

	/**
	 * Returns a new object of class '<em>Shelf Document</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Shelf Document</em>'.
	 * @generated
	 */
	ShelfDocument createShelfDocument();

	/**
	 * Returns a new object of class '<em>Stock Item</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Stock Item</em>'.
	 * @generated
	 */
	StockItem createStockItem();

	/**
	 * Returns a new object of class '<em>Stock Lot</em>'.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return a new object of class '<em>Stock Lot</em>'.
	 * @generated
	 */
	StockLot createStockLot();

	/**
	 * Returns the package supported by this factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the package supported by this factory.
	 * @generated
	 */
	ModelPackage getModelPackage();

} //ModelFactory
