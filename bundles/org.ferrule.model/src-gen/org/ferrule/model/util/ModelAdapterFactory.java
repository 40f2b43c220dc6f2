/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.util;

import org.eclipse.emf.common.notify.Adapter;
import org.eclipse.emf.common.notify.Notifier;

import org.eclipse.emf.common.notify.impl.AdapterFactoryImpl;

import org.eclipse.emf.ecore.EObject;

import org.ferrule.model.*;

/**
 * <!-- begin-user-doc -->
 * The <b>Adapter Factory</b> for the model.
 * It provides an adapter <code>createXXX</code> method for each class of the model.
 * <!-- end-user-doc -->
 * @see org.ferrule.model.ModelPackage
 * @generated
 */
public class ModelAdapterFactory extends AdapterFactoryImpl
{
	/**
	 * The cached model package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected static ModelPackage modelPackage;

	/**
	 * Creates an instance of the adapter factory.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ModelAdapterFactory()
	{
		if (modelPackage == null)
		{
			modelPackage = ModelPackage.eINSTANCE;
		}
	}

	/**
	 * Returns whether this factory is applicable for the type of the object.
	 * <!-- begin-user-doc -->
	 * This implementation returns <code>true</code> if the object is either the model's package or is an instance object of the model.
	 * <!-- end-user-doc -->
	 * @return whether this factory is applicable for the type of the object.
	 * @generated
	 */
	@Override
	public boolean isFactoryForType(Object object)
	{
		if (object == modelPackage)
		{
			return true;
		}
		if (object instanceof EObject)
		{
			return ((EObject)object).eClass().getEPackage() == modelPackage;
		}
		return false;
	}

	/**
	 * The switch that delegates to the <code>createXXX</code> methods.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ModelSwitch<Adapter> modelSwitch =
		new ModelSwitch<Adapter>()
		{
			@Override
			public Adapter caseExtraKey(ExtraKey object)
			{
				return createExtraKeyAdapter();
			}
			@Override
			public Adapter caseElement(Element object)
			{
				return createElementAdapter();
			}
			@Override
			public Adapter caseSourced(Sourced object)
			{
				return createSourcedAdapter();
			}
			@Override
			public Adapter caseDocument(Document object)
			{
				return createDocumentAdapter();
			}
			@Override
			public Adapter caseSource(Source object)
			{
				return createSourceAdapter();
			}
			@Override
			public Adapter caseDeviceLibrary(DeviceLibrary object)
			{
				return createDeviceLibraryAdapter();
			}
			@Override
			public Adapter caseDeviceParts(DeviceParts object)
			{
				return createDevicePartsAdapter();
			}
			@Override
			public Adapter caseDeviceLine(DeviceLine object)
			{
				return createDeviceLineAdapter();
			}
			@Override
			public Adapter caseDevice(Device object)
			{
				return createDeviceAdapter();
			}
			@Override
			public Adapter caseShaftSection(ShaftSection object)
			{
				return createShaftSectionAdapter();
			}
			@Override
			public Adapter caseOval(Oval object)
			{
				return createOvalAdapter();
			}
			@Override
			public Adapter caseDisc(Disc object)
			{
				return createDiscAdapter();
			}
			@Override
			public Adapter caseLumen(Lumen object)
			{
				return createLumenAdapter();
			}
			@Override
			public Adapter caseLumenSection(LumenSection object)
			{
				return createLumenSectionAdapter();
			}
			@Override
			public Adapter caseMarker(Marker object)
			{
				return createMarkerAdapter();
			}
			@Override
			public Adapter caseBalloon(Balloon object)
			{
				return createBalloonAdapter();
			}
			@Override
			public Adapter caseComplianceRow(ComplianceRow object)
			{
				return createComplianceRowAdapter();
			}
			@Override
			public Adapter caseStent(Stent object)
			{
				return createStentAdapter();
			}
			@Override
			public Adapter caseCutter(Cutter object)
			{
				return createCutterAdapter();
			}
			@Override
			public Adapter caseTransducer(Transducer object)
			{
				return createTransducerAdapter();
			}
			@Override
			public Adapter caseWireTraits(WireTraits object)
			{
				return createWireTraitsAdapter();
			}
			@Override
			public Adapter caseClaim(Claim object)
			{
				return createClaimAdapter();
			}
			@Override
			public Adapter caseBenchResult(BenchResult object)
			{
				return createBenchResultAdapter();
			}
			@Override
			public Adapter caseRuleSet(RuleSet object)
			{
				return createRuleSetAdapter();
			}
			@Override
			public Adapter caseSpan(Span object)
			{
				return createSpanAdapter();
			}
			@Override
			public Adapter caseClearanceRule(ClearanceRule object)
			{
				return createClearanceRuleAdapter();
			}
			@Override
			public Adapter caseAfterUseRule(AfterUseRule object)
			{
				return createAfterUseRuleAdapter();
			}
			@Override
			public Adapter caseFlowLimit(FlowLimit object)
			{
				return createFlowLimitAdapter();
			}
			@Override
			public Adapter caseAllowance(Allowance object)
			{
				return createAllowanceAdapter();
			}
			@Override
			public Adapter caseRatioBand(RatioBand object)
			{
				return createRatioBandAdapter();
			}
			@Override
			public Adapter caseChanceLimit(ChanceLimit object)
			{
				return createChanceLimitAdapter();
			}
			@Override
			public Adapter caseFitChart(FitChart object)
			{
				return createFitChartAdapter();
			}
			@Override
			public Adapter caseSignOff(SignOff object)
			{
				return createSignOffAdapter();
			}
			@Override
			public Adapter caseSignedRow(SignedRow object)
			{
				return createSignedRowAdapter();
			}
			@Override
			public Adapter caseAxis(Axis object)
			{
				return createAxisAdapter();
			}
			@Override
			public Adapter caseConditions(Conditions object)
			{
				return createConditionsAdapter();
			}
			@Override
			public Adapter caseOccupant(Occupant object)
			{
				return createOccupantAdapter();
			}
			@Override
			public Adapter caseThroughExtension(ThroughExtension object)
			{
				return createThroughExtensionAdapter();
			}
			@Override
			public Adapter caseBend(Bend object)
			{
				return createBendAdapter();
			}
			@Override
			public Adapter caseVesselPath(VesselPath object)
			{
				return createVesselPathAdapter();
			}
			@Override
			public Adapter caseVesselSegment(VesselSegment object)
			{
				return createVesselSegmentAdapter();
			}
			@Override
			public Adapter caseLesion(Lesion object)
			{
				return createLesionAdapter();
			}
			@Override
			public Adapter casePaper(Paper object)
			{
				return createPaperAdapter();
			}
			@Override
			public Adapter caseTechniqueLibrary(TechniqueLibrary object)
			{
				return createTechniqueLibraryAdapter();
			}
			@Override
			public Adapter caseFact(Fact object)
			{
				return createFactAdapter();
			}
			@Override
			public Adapter caseMove(Move object)
			{
				return createMoveAdapter();
			}
			@Override
			public Adapter caseCosted(Costed object)
			{
				return createCostedAdapter();
			}
			@Override
			public Adapter caseAdvised(Advised object)
			{
				return createAdvisedAdapter();
			}
			@Override
			public Adapter caseSetup(Setup object)
			{
				return createSetupAdapter();
			}
			@Override
			public Adapter caseTechnique(Technique object)
			{
				return createTechniqueAdapter();
			}
			@Override
			public Adapter caseRole(Role object)
			{
				return createRoleAdapter();
			}
			@Override
			public Adapter caseNeed(Need object)
			{
				return createNeedAdapter();
			}
			@Override
			public Adapter casePlacement(Placement object)
			{
				return createPlacementAdapter();
			}
			@Override
			public Adapter casePlannedTry(PlannedTry object)
			{
				return createPlannedTryAdapter();
			}
			@Override
			public Adapter casePrior(Prior object)
			{
				return createPriorAdapter();
			}
			@Override
			public Adapter casePublished(Published object)
			{
				return createPublishedAdapter();
			}
			@Override
			public Adapter caseStopRule(StopRule object)
			{
				return createStopRuleAdapter();
			}
			@Override
			public Adapter caseCaseDocument(CaseDocument object)
			{
				return createCaseDocumentAdapter();
			}
			@Override
			public Adapter caseAccess(Access object)
			{
				return createAccessAdapter();
			}
			@Override
			public Adapter caseSystemInPlace(SystemInPlace object)
			{
				return createSystemInPlaceAdapter();
			}
			@Override
			public Adapter caseSideBranch(SideBranch object)
			{
				return createSideBranchAdapter();
			}
			@Override
			public Adapter caseStatedFact(StatedFact object)
			{
				return createStatedFactAdapter();
			}
			@Override
			public Adapter caseLesionMeasures(LesionMeasures object)
			{
				return createLesionMeasuresAdapter();
			}
			@Override
			public Adapter casePatientFigures(PatientFigures object)
			{
				return createPatientFiguresAdapter();
			}
			@Override
			public Adapter caseCaseAim(CaseAim object)
			{
				return createCaseAimAdapter();
			}
			@Override
			public Adapter caseCosts(Costs object)
			{
				return createCostsAdapter();
			}
			@Override
			public Adapter caseLoggedAttempt(LoggedAttempt object)
			{
				return createLoggedAttemptAdapter();
			}
			@Override
			public Adapter caseUsedUnit(UsedUnit object)
			{
				return createUsedUnitAdapter();
			}
			@Override
			public Adapter caseClosing(Closing object)
			{
				return createClosingAdapter();
			}
			@Override
			public Adapter caseClosedStep(ClosedStep object)
			{
				return createClosedStepAdapter();
			}
			@Override
			public Adapter caseClosedDevice(ClosedDevice object)
			{
				return createClosedDeviceAdapter();
			}
			@Override
			public Adapter caseDocumentHash(DocumentHash object)
			{
				return createDocumentHashAdapter();
			}
			@Override
			public Adapter caseShelfDocument(ShelfDocument object)
			{
				return createShelfDocumentAdapter();
			}
			@Override
			public Adapter caseStockItem(StockItem object)
			{
				return createStockItemAdapter();
			}
			@Override
			public Adapter caseStockLot(StockLot object)
			{
				return createStockLotAdapter();
			}
			@Override
			public Adapter defaultCase(EObject object)
			{
				return createEObjectAdapter();
			}
		};

	/**
	 * Creates an adapter for the <code>target</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param target the object to adapt.
	 * @return the adapter for the <code>target</code>.
	 * @generated
	 */
	@Override
	public Adapter createAdapter(Notifier target)
	{
		return modelSwitch.doSwitch((EObject)target);
	}


	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.ExtraKey <em>Extra Key</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.ExtraKey
	 * @generated
	 */
	public Adapter createExtraKeyAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Element <em>Element</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Element
	 * @generated
	 */
	public Adapter createElementAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Sourced <em>Sourced</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Sourced
	 * @generated
	 */
	public Adapter createSourcedAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Document <em>Document</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Document
	 * @generated
	 */
	public Adapter createDocumentAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Source <em>Source</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Source
	 * @generated
	 */
	public Adapter createSourceAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.DeviceLibrary <em>Device Library</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.DeviceLibrary
	 * @generated
	 */
	public Adapter createDeviceLibraryAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.DeviceParts <em>Device Parts</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.DeviceParts
	 * @generated
	 */
	public Adapter createDevicePartsAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.DeviceLine <em>Device Line</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.DeviceLine
	 * @generated
	 */
	public Adapter createDeviceLineAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Device <em>Device</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Device
	 * @generated
	 */
	public Adapter createDeviceAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.ShaftSection <em>Shaft Section</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.ShaftSection
	 * @generated
	 */
	public Adapter createShaftSectionAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Oval <em>Oval</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Oval
	 * @generated
	 */
	public Adapter createOvalAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Disc <em>Disc</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Disc
	 * @generated
	 */
	public Adapter createDiscAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Lumen <em>Lumen</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Lumen
	 * @generated
	 */
	public Adapter createLumenAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.LumenSection <em>Lumen Section</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.LumenSection
	 * @generated
	 */
	public Adapter createLumenSectionAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Marker <em>Marker</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Marker
	 * @generated
	 */
	public Adapter createMarkerAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Balloon <em>Balloon</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Balloon
	 * @generated
	 */
	public Adapter createBalloonAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.ComplianceRow <em>Compliance Row</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.ComplianceRow
	 * @generated
	 */
	public Adapter createComplianceRowAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Stent <em>Stent</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Stent
	 * @generated
	 */
	public Adapter createStentAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Cutter <em>Cutter</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Cutter
	 * @generated
	 */
	public Adapter createCutterAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Transducer <em>Transducer</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Transducer
	 * @generated
	 */
	public Adapter createTransducerAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.WireTraits <em>Wire Traits</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.WireTraits
	 * @generated
	 */
	public Adapter createWireTraitsAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Claim <em>Claim</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Claim
	 * @generated
	 */
	public Adapter createClaimAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.BenchResult <em>Bench Result</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.BenchResult
	 * @generated
	 */
	public Adapter createBenchResultAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.RuleSet <em>Rule Set</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.RuleSet
	 * @generated
	 */
	public Adapter createRuleSetAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Span <em>Span</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Span
	 * @generated
	 */
	public Adapter createSpanAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.ClearanceRule <em>Clearance Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.ClearanceRule
	 * @generated
	 */
	public Adapter createClearanceRuleAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.AfterUseRule <em>After Use Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.AfterUseRule
	 * @generated
	 */
	public Adapter createAfterUseRuleAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.FlowLimit <em>Flow Limit</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.FlowLimit
	 * @generated
	 */
	public Adapter createFlowLimitAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Allowance <em>Allowance</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Allowance
	 * @generated
	 */
	public Adapter createAllowanceAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.RatioBand <em>Ratio Band</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.RatioBand
	 * @generated
	 */
	public Adapter createRatioBandAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.ChanceLimit <em>Chance Limit</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.ChanceLimit
	 * @generated
	 */
	public Adapter createChanceLimitAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.FitChart <em>Fit Chart</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.FitChart
	 * @generated
	 */
	public Adapter createFitChartAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.SignOff <em>Sign Off</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.SignOff
	 * @generated
	 */
	public Adapter createSignOffAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.SignedRow <em>Signed Row</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.SignedRow
	 * @generated
	 */
	public Adapter createSignedRowAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Axis <em>Axis</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Axis
	 * @generated
	 */
	public Adapter createAxisAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Conditions <em>Conditions</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Conditions
	 * @generated
	 */
	public Adapter createConditionsAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Occupant <em>Occupant</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Occupant
	 * @generated
	 */
	public Adapter createOccupantAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.ThroughExtension <em>Through Extension</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.ThroughExtension
	 * @generated
	 */
	public Adapter createThroughExtensionAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Bend <em>Bend</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Bend
	 * @generated
	 */
	public Adapter createBendAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.VesselPath <em>Vessel Path</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.VesselPath
	 * @generated
	 */
	public Adapter createVesselPathAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.VesselSegment <em>Vessel Segment</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.VesselSegment
	 * @generated
	 */
	public Adapter createVesselSegmentAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Lesion <em>Lesion</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Lesion
	 * @generated
	 */
	public Adapter createLesionAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Paper <em>Paper</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Paper
	 * @generated
	 */
	public Adapter createPaperAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.TechniqueLibrary <em>Technique Library</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.TechniqueLibrary
	 * @generated
	 */
	public Adapter createTechniqueLibraryAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Fact <em>Fact</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Fact
	 * @generated
	 */
	public Adapter createFactAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Move <em>Move</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Move
	 * @generated
	 */
	public Adapter createMoveAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Costed <em>Costed</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Costed
	 * @generated
	 */
	public Adapter createCostedAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Advised <em>Advised</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Advised
	 * @generated
	 */
	public Adapter createAdvisedAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Setup <em>Setup</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Setup
	 * @generated
	 */
	public Adapter createSetupAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Technique <em>Technique</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Technique
	 * @generated
	 */
	public Adapter createTechniqueAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Role <em>Role</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Role
	 * @generated
	 */
	public Adapter createRoleAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Need <em>Need</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Need
	 * @generated
	 */
	public Adapter createNeedAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Placement <em>Placement</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Placement
	 * @generated
	 */
	public Adapter createPlacementAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.PlannedTry <em>Planned Try</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.PlannedTry
	 * @generated
	 */
	public Adapter createPlannedTryAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Prior <em>Prior</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Prior
	 * @generated
	 */
	public Adapter createPriorAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Published <em>Published</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Published
	 * @generated
	 */
	public Adapter createPublishedAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.StopRule <em>Stop Rule</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.StopRule
	 * @generated
	 */
	public Adapter createStopRuleAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.CaseDocument <em>Case Document</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.CaseDocument
	 * @generated
	 */
	public Adapter createCaseDocumentAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Access <em>Access</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Access
	 * @generated
	 */
	public Adapter createAccessAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.SystemInPlace <em>System In Place</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.SystemInPlace
	 * @generated
	 */
	public Adapter createSystemInPlaceAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.SideBranch <em>Side Branch</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.SideBranch
	 * @generated
	 */
	public Adapter createSideBranchAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.StatedFact <em>Stated Fact</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.StatedFact
	 * @generated
	 */
	public Adapter createStatedFactAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.LesionMeasures <em>Lesion Measures</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.LesionMeasures
	 * @generated
	 */
	public Adapter createLesionMeasuresAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.PatientFigures <em>Patient Figures</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.PatientFigures
	 * @generated
	 */
	public Adapter createPatientFiguresAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.CaseAim <em>Case Aim</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.CaseAim
	 * @generated
	 */
	public Adapter createCaseAimAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Costs <em>Costs</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Costs
	 * @generated
	 */
	public Adapter createCostsAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.LoggedAttempt <em>Logged Attempt</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.LoggedAttempt
	 * @generated
	 */
	public Adapter createLoggedAttemptAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.UsedUnit <em>Used Unit</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.UsedUnit
	 * @generated
	 */
	public Adapter createUsedUnitAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.Closing <em>Closing</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.Closing
	 * @generated
	 */
	public Adapter createClosingAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.ClosedStep <em>Closed Step</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.ClosedStep
	 * @generated
	 */
	public Adapter createClosedStepAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.ClosedDevice <em>Closed Device</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.ClosedDevice
	 * @generated
	 */
	public Adapter createClosedDeviceAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.DocumentHash <em>Document Hash</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.DocumentHash
	 * @generated
	 */
	public Adapter createDocumentHashAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.ShelfDocument <em>Shelf Document</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.ShelfDocument
	 * @generated
	 */
	public Adapter createShelfDocumentAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.StockItem <em>Stock Item</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.StockItem
	 * @generated
	 */
	public Adapter createStockItemAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for an object of class '{@link org.ferrule.model.StockLot <em>Stock Lot</em>}'.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null so that we can easily ignore cases;
	 * it's useful to ignore a case when inheritance will catch all the cases anyway.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @see org.ferrule.model.StockLot
	 * @generated
	 */
	public Adapter createStockLotAdapter()
	{
		return null;
	}

	/**
	 * Creates a new adapter for the default case.
	 * <!-- begin-user-doc -->
	 * This default implementation returns null.
	 * <!-- end-user-doc -->
	 * @return the new adapter.
	 * @generated
	 */
	public Adapter createEObjectAdapter()
	{
		return null;
	}

} //ModelAdapterFactory
