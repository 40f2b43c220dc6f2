/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.util;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;

import org.eclipse.emf.ecore.util.Switch;

import org.ferrule.model.*;

/**
 * <!-- begin-user-doc -->
 * The <b>Switch</b> for the model's inheritance hierarchy.
 * It supports the call {@link #doSwitch(EObject) doSwitch(object)}
 * to invoke the <code>caseXXX</code> method for each class of the model,
 * starting with the actual class of the object
 * and proceeding up the inheritance hierarchy
 * until a non-null result is returned,
 * which is the result of the switch.
 * <!-- end-user-doc -->
 * @see org.ferrule.model.ModelPackage
 * @generated
 */
public class ModelSwitch<T> extends Switch<T>
{
	/**
	 * The cached model package
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected static ModelPackage modelPackage;

	/**
	 * Creates an instance of the switch.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public ModelSwitch()
	{
		if (modelPackage == null)
		{
			modelPackage = ModelPackage.eINSTANCE;
		}
	}

	/**
	 * Checks whether this is a switch for the given package.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param ePackage the package in question.
	 * @return whether this is a switch for the given package.
	 * @generated
	 */
	@Override
	protected boolean isSwitchFor(EPackage ePackage)
	{
		return ePackage == modelPackage;
	}

	/**
	 * Calls <code>caseXXX</code> for each class of the model until one returns a non null result; it yields that result.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the first non-null result returned by a <code>caseXXX</code> call.
	 * @generated
	 */
	@Override
	protected T doSwitch(int classifierID, EObject theEObject)
	{
		switch (classifierID)
		{
			case ModelPackage.EXTRA_KEY:
			{
				ExtraKey extraKey = (ExtraKey)theEObject;
				T result = caseExtraKey(extraKey);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.ELEMENT:
			{
				Element element = (Element)theEObject;
				T result = caseElement(element);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.SOURCED:
			{
				Sourced sourced = (Sourced)theEObject;
				T result = caseSourced(sourced);
				if (result == null) result = caseElement(sourced);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.DOCUMENT:
			{
				Document document = (Document)theEObject;
				T result = caseDocument(document);
				if (result == null) result = caseElement(document);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.SOURCE:
			{
				Source source = (Source)theEObject;
				T result = caseSource(source);
				if (result == null) result = caseElement(source);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.DEVICE_LIBRARY:
			{
				DeviceLibrary deviceLibrary = (DeviceLibrary)theEObject;
				T result = caseDeviceLibrary(deviceLibrary);
				if (result == null) result = caseDocument(deviceLibrary);
				if (result == null) result = caseElement(deviceLibrary);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.DEVICE_PARTS:
			{
				DeviceParts deviceParts = (DeviceParts)theEObject;
				T result = caseDeviceParts(deviceParts);
				if (result == null) result = caseSourced(deviceParts);
				if (result == null) result = caseElement(deviceParts);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.DEVICE_LINE:
			{
				DeviceLine deviceLine = (DeviceLine)theEObject;
				T result = caseDeviceLine(deviceLine);
				if (result == null) result = caseDeviceParts(deviceLine);
				if (result == null) result = caseSourced(deviceLine);
				if (result == null) result = caseElement(deviceLine);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.DEVICE:
			{
				Device device = (Device)theEObject;
				T result = caseDevice(device);
				if (result == null) result = caseDeviceParts(device);
				if (result == null) result = caseSourced(device);
				if (result == null) result = caseElement(device);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.SHAFT_SECTION:
			{
				ShaftSection shaftSection = (ShaftSection)theEObject;
				T result = caseShaftSection(shaftSection);
				if (result == null) result = caseSourced(shaftSection);
				if (result == null) result = caseElement(shaftSection);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.OVAL:
			{
				Oval oval = (Oval)theEObject;
				T result = caseOval(oval);
				if (result == null) result = caseElement(oval);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.DISC:
			{
				Disc disc = (Disc)theEObject;
				T result = caseDisc(disc);
				if (result == null) result = caseElement(disc);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.LUMEN:
			{
				Lumen lumen = (Lumen)theEObject;
				T result = caseLumen(lumen);
				if (result == null) result = caseSourced(lumen);
				if (result == null) result = caseElement(lumen);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.LUMEN_SECTION:
			{
				LumenSection lumenSection = (LumenSection)theEObject;
				T result = caseLumenSection(lumenSection);
				if (result == null) result = caseSourced(lumenSection);
				if (result == null) result = caseElement(lumenSection);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.MARKER:
			{
				Marker marker = (Marker)theEObject;
				T result = caseMarker(marker);
				if (result == null) result = caseSourced(marker);
				if (result == null) result = caseElement(marker);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.BALLOON:
			{
				Balloon balloon = (Balloon)theEObject;
				T result = caseBalloon(balloon);
				if (result == null) result = caseSourced(balloon);
				if (result == null) result = caseElement(balloon);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.COMPLIANCE_ROW:
			{
				ComplianceRow complianceRow = (ComplianceRow)theEObject;
				T result = caseComplianceRow(complianceRow);
				if (result == null) result = caseElement(complianceRow);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.STENT:
			{
				Stent stent = (Stent)theEObject;
				T result = caseStent(stent);
				if (result == null) result = caseSourced(stent);
				if (result == null) result = caseElement(stent);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.CUTTER:
			{
				Cutter cutter = (Cutter)theEObject;
				T result = caseCutter(cutter);
				if (result == null) result = caseSourced(cutter);
				if (result == null) result = caseElement(cutter);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.TRANSDUCER:
			{
				Transducer transducer = (Transducer)theEObject;
				T result = caseTransducer(transducer);
				if (result == null) result = caseSourced(transducer);
				if (result == null) result = caseElement(transducer);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.WIRE_TRAITS:
			{
				WireTraits wireTraits = (WireTraits)theEObject;
				T result = caseWireTraits(wireTraits);
				if (result == null) result = caseSourced(wireTraits);
				if (result == null) result = caseElement(wireTraits);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.CLAIM:
			{
				Claim claim = (Claim)theEObject;
				T result = caseClaim(claim);
				if (result == null) result = caseSourced(claim);
				if (result == null) result = caseElement(claim);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.BENCH_RESULT:
			{
				BenchResult benchResult = (BenchResult)theEObject;
				T result = caseBenchResult(benchResult);
				if (result == null) result = caseSourced(benchResult);
				if (result == null) result = caseElement(benchResult);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.RULE_SET:
			{
				RuleSet ruleSet = (RuleSet)theEObject;
				T result = caseRuleSet(ruleSet);
				if (result == null) result = caseDocument(ruleSet);
				if (result == null) result = caseElement(ruleSet);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.SPAN:
			{
				Span span = (Span)theEObject;
				T result = caseSpan(span);
				if (result == null) result = caseSourced(span);
				if (result == null) result = caseElement(span);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.CLEARANCE_RULE:
			{
				ClearanceRule clearanceRule = (ClearanceRule)theEObject;
				T result = caseClearanceRule(clearanceRule);
				if (result == null) result = caseSourced(clearanceRule);
				if (result == null) result = caseElement(clearanceRule);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.AFTER_USE_RULE:
			{
				AfterUseRule afterUseRule = (AfterUseRule)theEObject;
				T result = caseAfterUseRule(afterUseRule);
				if (result == null) result = caseSourced(afterUseRule);
				if (result == null) result = caseElement(afterUseRule);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.FLOW_LIMIT:
			{
				FlowLimit flowLimit = (FlowLimit)theEObject;
				T result = caseFlowLimit(flowLimit);
				if (result == null) result = caseSourced(flowLimit);
				if (result == null) result = caseElement(flowLimit);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.ALLOWANCE:
			{
				Allowance allowance = (Allowance)theEObject;
				T result = caseAllowance(allowance);
				if (result == null) result = caseSourced(allowance);
				if (result == null) result = caseElement(allowance);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.RATIO_BAND:
			{
				RatioBand ratioBand = (RatioBand)theEObject;
				T result = caseRatioBand(ratioBand);
				if (result == null) result = caseSourced(ratioBand);
				if (result == null) result = caseElement(ratioBand);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.CHANCE_LIMIT:
			{
				ChanceLimit chanceLimit = (ChanceLimit)theEObject;
				T result = caseChanceLimit(chanceLimit);
				if (result == null) result = caseSourced(chanceLimit);
				if (result == null) result = caseElement(chanceLimit);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.FIT_CHART:
			{
				FitChart fitChart = (FitChart)theEObject;
				T result = caseFitChart(fitChart);
				if (result == null) result = caseDocument(fitChart);
				if (result == null) result = caseElement(fitChart);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.SIGN_OFF:
			{
				SignOff signOff = (SignOff)theEObject;
				T result = caseSignOff(signOff);
				if (result == null) result = caseElement(signOff);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.SIGNED_ROW:
			{
				SignedRow signedRow = (SignedRow)theEObject;
				T result = caseSignedRow(signedRow);
				if (result == null) result = caseElement(signedRow);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.AXIS:
			{
				Axis axis = (Axis)theEObject;
				T result = caseAxis(axis);
				if (result == null) result = caseElement(axis);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.CONDITIONS:
			{
				Conditions conditions = (Conditions)theEObject;
				T result = caseConditions(conditions);
				if (result == null) result = caseElement(conditions);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.OCCUPANT:
			{
				Occupant occupant = (Occupant)theEObject;
				T result = caseOccupant(occupant);
				if (result == null) result = caseElement(occupant);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.THROUGH_EXTENSION:
			{
				ThroughExtension throughExtension = (ThroughExtension)theEObject;
				T result = caseThroughExtension(throughExtension);
				if (result == null) result = caseElement(throughExtension);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.BEND:
			{
				Bend bend = (Bend)theEObject;
				T result = caseBend(bend);
				if (result == null) result = caseElement(bend);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.VESSEL_PATH:
			{
				VesselPath vesselPath = (VesselPath)theEObject;
				T result = caseVesselPath(vesselPath);
				if (result == null) result = caseSourced(vesselPath);
				if (result == null) result = caseElement(vesselPath);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.VESSEL_SEGMENT:
			{
				VesselSegment vesselSegment = (VesselSegment)theEObject;
				T result = caseVesselSegment(vesselSegment);
				if (result == null) result = caseElement(vesselSegment);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.LESION:
			{
				Lesion lesion = (Lesion)theEObject;
				T result = caseLesion(lesion);
				if (result == null) result = caseSourced(lesion);
				if (result == null) result = caseElement(lesion);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.PAPER:
			{
				Paper paper = (Paper)theEObject;
				T result = casePaper(paper);
				if (result == null) result = caseElement(paper);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.TECHNIQUE_LIBRARY:
			{
				TechniqueLibrary techniqueLibrary = (TechniqueLibrary)theEObject;
				T result = caseTechniqueLibrary(techniqueLibrary);
				if (result == null) result = caseDocument(techniqueLibrary);
				if (result == null) result = caseElement(techniqueLibrary);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.FACT:
			{
				Fact fact = (Fact)theEObject;
				T result = caseFact(fact);
				if (result == null) result = caseElement(fact);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.MOVE:
			{
				Move move = (Move)theEObject;
				T result = caseMove(move);
				if (result == null) result = caseSourced(move);
				if (result == null) result = caseElement(move);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.COSTED:
			{
				Costed costed = (Costed)theEObject;
				T result = caseCosted(costed);
				if (result == null) result = caseElement(costed);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.ADVISED:
			{
				Advised advised = (Advised)theEObject;
				T result = caseAdvised(advised);
				if (result == null) result = caseSourced(advised);
				if (result == null) result = caseElement(advised);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.SETUP:
			{
				Setup setup = (Setup)theEObject;
				T result = caseSetup(setup);
				if (result == null) result = caseMove(setup);
				if (result == null) result = caseCosted(setup);
				if (result == null) result = caseAdvised(setup);
				if (result == null) result = caseSourced(setup);
				if (result == null) result = caseElement(setup);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.TECHNIQUE:
			{
				Technique technique = (Technique)theEObject;
				T result = caseTechnique(technique);
				if (result == null) result = caseMove(technique);
				if (result == null) result = caseAdvised(technique);
				if (result == null) result = caseSourced(technique);
				if (result == null) result = caseElement(technique);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.ROLE:
			{
				Role role = (Role)theEObject;
				T result = caseRole(role);
				if (result == null) result = caseSourced(role);
				if (result == null) result = caseElement(role);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.NEED:
			{
				Need need = (Need)theEObject;
				T result = caseNeed(need);
				if (result == null) result = caseElement(need);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.PLACEMENT:
			{
				Placement placement = (Placement)theEObject;
				T result = casePlacement(placement);
				if (result == null) result = caseElement(placement);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.PLANNED_TRY:
			{
				PlannedTry plannedTry = (PlannedTry)theEObject;
				T result = casePlannedTry(plannedTry);
				if (result == null) result = caseCosted(plannedTry);
				if (result == null) result = caseSourced(plannedTry);
				if (result == null) result = caseElement(plannedTry);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.PRIOR:
			{
				Prior prior = (Prior)theEObject;
				T result = casePrior(prior);
				if (result == null) result = caseElement(prior);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.PUBLISHED:
			{
				Published published = (Published)theEObject;
				T result = casePublished(published);
				if (result == null) result = caseSourced(published);
				if (result == null) result = caseElement(published);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.STOP_RULE:
			{
				StopRule stopRule = (StopRule)theEObject;
				T result = caseStopRule(stopRule);
				if (result == null) result = caseSourced(stopRule);
				if (result == null) result = caseElement(stopRule);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.CASE_DOCUMENT:
			{
				CaseDocument caseDocument = (CaseDocument)theEObject;
				T result = caseCaseDocument(caseDocument);
				if (result == null) result = caseDocument(caseDocument);
				if (result == null) result = caseElement(caseDocument);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.ACCESS:
			{
				Access access = (Access)theEObject;
				T result = caseAccess(access);
				if (result == null) result = caseSourced(access);
				if (result == null) result = caseElement(access);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.SYSTEM_IN_PLACE:
			{
				SystemInPlace systemInPlace = (SystemInPlace)theEObject;
				T result = caseSystemInPlace(systemInPlace);
				if (result == null) result = caseElement(systemInPlace);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.SIDE_BRANCH:
			{
				SideBranch sideBranch = (SideBranch)theEObject;
				T result = caseSideBranch(sideBranch);
				if (result == null) result = caseSourced(sideBranch);
				if (result == null) result = caseElement(sideBranch);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.STATED_FACT:
			{
				StatedFact statedFact = (StatedFact)theEObject;
				T result = caseStatedFact(statedFact);
				if (result == null) result = caseElement(statedFact);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.LESION_MEASURES:
			{
				LesionMeasures lesionMeasures = (LesionMeasures)theEObject;
				T result = caseLesionMeasures(lesionMeasures);
				if (result == null) result = caseSourced(lesionMeasures);
				if (result == null) result = caseElement(lesionMeasures);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.PATIENT_FIGURES:
			{
				PatientFigures patientFigures = (PatientFigures)theEObject;
				T result = casePatientFigures(patientFigures);
				if (result == null) result = caseElement(patientFigures);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.CASE_AIM:
			{
				CaseAim caseAim = (CaseAim)theEObject;
				T result = caseCaseAim(caseAim);
				if (result == null) result = caseElement(caseAim);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.COSTS:
			{
				Costs costs = (Costs)theEObject;
				T result = caseCosts(costs);
				if (result == null) result = caseCosted(costs);
				if (result == null) result = caseElement(costs);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.LOGGED_ATTEMPT:
			{
				LoggedAttempt loggedAttempt = (LoggedAttempt)theEObject;
				T result = caseLoggedAttempt(loggedAttempt);
				if (result == null) result = caseCosted(loggedAttempt);
				if (result == null) result = caseElement(loggedAttempt);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.USED_UNIT:
			{
				UsedUnit usedUnit = (UsedUnit)theEObject;
				T result = caseUsedUnit(usedUnit);
				if (result == null) result = caseElement(usedUnit);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.CLOSING:
			{
				Closing closing = (Closing)theEObject;
				T result = caseClosing(closing);
				if (result == null) result = caseElement(closing);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.CLOSED_STEP:
			{
				ClosedStep closedStep = (ClosedStep)theEObject;
				T result = caseClosedStep(closedStep);
				if (result == null) result = caseElement(closedStep);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.CLOSED_DEVICE:
			{
				ClosedDevice closedDevice = (ClosedDevice)theEObject;
				T result = caseClosedDevice(closedDevice);
				if (result == null) result = caseElement(closedDevice);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.DOCUMENT_HASH:
			{
				DocumentHash documentHash = (DocumentHash)theEObject;
				T result = caseDocumentHash(documentHash);
				if (result == null) result = caseElement(documentHash);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.SHELF_DOCUMENT:
			{
				ShelfDocument shelfDocument = (ShelfDocument)theEObject;
				T result = caseShelfDocument(shelfDocument);
				if (result == null) result = caseDocument(shelfDocument);
				if (result == null) result = caseElement(shelfDocument);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.STOCK_ITEM:
			{
				StockItem stockItem = (StockItem)theEObject;
				T result = caseStockItem(stockItem);
				if (result == null) result = caseSourced(stockItem);
				if (result == null) result = caseElement(stockItem);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			case ModelPackage.STOCK_LOT:
			{
				StockLot stockLot = (StockLot)theEObject;
				T result = caseStockLot(stockLot);
				if (result == null) result = caseElement(stockLot);
				if (result == null) result = defaultCase(theEObject);
				return result;
			}
			default: return defaultCase(theEObject);
		}
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Extra Key</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Extra Key</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseExtraKey(ExtraKey object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Element</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Element</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseElement(Element object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Sourced</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Sourced</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSourced(Sourced object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Document</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Document</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseDocument(Document object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Source</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Source</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSource(Source object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Device Library</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Device Library</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseDeviceLibrary(DeviceLibrary object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Device Parts</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Device Parts</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseDeviceParts(DeviceParts object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Device Line</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Device Line</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseDeviceLine(DeviceLine object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Device</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Device</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseDevice(Device object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Shaft Section</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Shaft Section</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseShaftSection(ShaftSection object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Oval</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Oval</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseOval(Oval object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Disc</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Disc</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseDisc(Disc object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Lumen</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Lumen</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseLumen(Lumen object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Lumen Section</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Lumen Section</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseLumenSection(LumenSection object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Marker</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Marker</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseMarker(Marker object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Balloon</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Balloon</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseBalloon(Balloon object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Compliance Row</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Compliance Row</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseComplianceRow(ComplianceRow object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Stent</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Stent</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseStent(Stent object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Cutter</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Cutter</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseCutter(Cutter object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Transducer</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Transducer</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseTransducer(Transducer object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Wire Traits</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Wire Traits</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseWireTraits(WireTraits object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Claim</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Claim</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseClaim(Claim object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Bench Result</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Bench Result</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseBenchResult(BenchResult object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Rule Set</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Rule Set</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseRuleSet(RuleSet object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Span</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Span</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSpan(Span object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Clearance Rule</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Clearance Rule</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseClearanceRule(ClearanceRule object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>After Use Rule</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>After Use Rule</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseAfterUseRule(AfterUseRule object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Flow Limit</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Flow Limit</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseFlowLimit(FlowLimit object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Allowance</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Allowance</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseAllowance(Allowance object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Ratio Band</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Ratio Band</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseRatioBand(RatioBand object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Chance Limit</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Chance Limit</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseChanceLimit(ChanceLimit object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Fit Chart</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Fit Chart</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseFitChart(FitChart object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Sign Off</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Sign Off</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSignOff(SignOff object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Signed Row</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Signed Row</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSignedRow(SignedRow object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Axis</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Axis</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseAxis(Axis object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Conditions</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Conditions</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseConditions(Conditions object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Occupant</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Occupant</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseOccupant(Occupant object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Through Extension</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Through Extension</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseThroughExtension(ThroughExtension object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Bend</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Bend</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseBend(Bend object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Vessel Path</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Vessel Path</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseVesselPath(VesselPath object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Vessel Segment</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Vessel Segment</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseVesselSegment(VesselSegment object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Lesion</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Lesion</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseLesion(Lesion object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Paper</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Paper</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePaper(Paper object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Technique Library</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Technique Library</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseTechniqueLibrary(TechniqueLibrary object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Fact</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Fact</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseFact(Fact object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Move</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Move</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseMove(Move object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Costed</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Costed</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseCosted(Costed object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Advised</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Advised</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseAdvised(Advised object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Setup</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Setup</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSetup(Setup object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Technique</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Technique</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseTechnique(Technique object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Role</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Role</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseRole(Role object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Need</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Need</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseNeed(Need object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Placement</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Placement</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePlacement(Placement object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Planned Try</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Planned Try</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePlannedTry(PlannedTry object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Prior</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Prior</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePrior(Prior object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Published</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Published</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePublished(Published object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Stop Rule</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Stop Rule</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseStopRule(StopRule object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Case Document</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Case Document</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseCaseDocument(CaseDocument object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Access</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Access</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseAccess(Access object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>System In Place</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>System In Place</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSystemInPlace(SystemInPlace object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Side Branch</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Side Branch</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseSideBranch(SideBranch object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Stated Fact</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Stated Fact</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseStatedFact(StatedFact object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Lesion Measures</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Lesion Measures</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseLesionMeasures(LesionMeasures object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Patient Figures</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Patient Figures</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T casePatientFigures(PatientFigures object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Case Aim</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Case Aim</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseCaseAim(CaseAim object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Costs</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Costs</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseCosts(Costs object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Logged Attempt</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Logged Attempt</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseLoggedAttempt(LoggedAttempt object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Used Unit</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Used Unit</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseUsedUnit(UsedUnit object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Closing</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Closing</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseClosing(Closing object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Closed Step</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Closed Step</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseClosedStep(ClosedStep object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Closed Device</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Closed Device</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseClosedDevice(ClosedDevice object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Document Hash</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Document Hash</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseDocumentHash(DocumentHash object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Shelf Document</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Shelf Document</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseShelfDocument(ShelfDocument object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Stock Item</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Stock Item</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseStockItem(StockItem object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>Stock Lot</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>Stock Lot</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject) doSwitch(EObject)
	 * @generated
	 */
	public T caseStockLot(StockLot object)
	{
		return null;
	}

	/**
	 * Returns the result of interpreting the object as an instance of '<em>EObject</em>'.
	 * <!-- begin-user-doc -->
	 * This implementation returns null;
	 * returning a non-null result will terminate the switch, but this is the last case anyway.
	 * <!-- end-user-doc -->
	 * @param object the target of the switch.
	 * @return the result of interpreting the object as an instance of '<em>EObject</em>'.
	 * @see #doSwitch(org.eclipse.emf.ecore.EObject)
	 * @generated
	 */
	@Override
	public T defaultCase(EObject object)
	{
		return null;
	}

} //ModelSwitch
