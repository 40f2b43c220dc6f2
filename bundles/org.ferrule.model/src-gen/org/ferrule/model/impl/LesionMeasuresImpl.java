/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import java.math.BigDecimal;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EDataTypeEList;

import org.ferrule.model.LesionMeasures;
import org.ferrule.model.LesionTrait;
import org.ferrule.model.ModelPackage;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Lesion Measures</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.LesionMeasuresImpl#isBluntStump <em>Blunt Stump</em>}</li>
 *   <li>{@link org.ferrule.model.impl.LesionMeasuresImpl#isCalcification <em>Calcification</em>}</li>
 *   <li>{@link org.ferrule.model.impl.LesionMeasuresImpl#getBendDegrees <em>Bend Degrees</em>}</li>
 *   <li>{@link org.ferrule.model.impl.LesionMeasuresImpl#isFailedBefore <em>Failed Before</em>}</li>
 *   <li>{@link org.ferrule.model.impl.LesionMeasuresImpl#getOcclusionMonths <em>Occlusion Months</em>}</li>
 *   <li>{@link org.ferrule.model.impl.LesionMeasuresImpl#getCalciumDegrees <em>Calcium Degrees</em>}</li>
 *   <li>{@link org.ferrule.model.impl.LesionMeasuresImpl#getCalciumThickness <em>Calcium Thickness</em>}</li>
 *   <li>{@link org.ferrule.model.impl.LesionMeasuresImpl#getCalciumLength <em>Calcium Length</em>}</li>
 *   <li>{@link org.ferrule.model.impl.LesionMeasuresImpl#getTraits <em>Traits</em>}</li>
 * </ul>
 *
 * @generated
 */
public class LesionMeasuresImpl extends SourcedImpl implements LesionMeasures
{
	/**
	 * The default value of the '{@link #isBluntStump() <em>Blunt Stump</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isBluntStump()
	 * @generated
	 * @ordered
	 */
	protected static final boolean BLUNT_STUMP_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isBluntStump() <em>Blunt Stump</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isBluntStump()
	 * @generated
	 * @ordered
	 */
	protected boolean bluntStump = BLUNT_STUMP_EDEFAULT;

	/**
	 * This is true if the Blunt Stump attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean bluntStumpESet;

	/**
	 * The default value of the '{@link #isCalcification() <em>Calcification</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isCalcification()
	 * @generated
	 * @ordered
	 */
	protected static final boolean CALCIFICATION_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isCalcification() <em>Calcification</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isCalcification()
	 * @generated
	 * @ordered
	 */
	protected boolean calcification = CALCIFICATION_EDEFAULT;

	/**
	 * This is true if the Calcification attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean calcificationESet;

	/**
	 * The default value of the '{@link #getBendDegrees() <em>Bend Degrees</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBendDegrees()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal BEND_DEGREES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getBendDegrees() <em>Bend Degrees</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBendDegrees()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal bendDegrees = BEND_DEGREES_EDEFAULT;

	/**
	 * The default value of the '{@link #isFailedBefore() <em>Failed Before</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isFailedBefore()
	 * @generated
	 * @ordered
	 */
	protected static final boolean FAILED_BEFORE_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isFailedBefore() <em>Failed Before</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isFailedBefore()
	 * @generated
	 * @ordered
	 */
	protected boolean failedBefore = FAILED_BEFORE_EDEFAULT;

	/**
	 * This is true if the Failed Before attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean failedBeforeESet;

	/**
	 * The default value of the '{@link #getOcclusionMonths() <em>Occlusion Months</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOcclusionMonths()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal OCCLUSION_MONTHS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getOcclusionMonths() <em>Occlusion Months</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOcclusionMonths()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal occlusionMonths = OCCLUSION_MONTHS_EDEFAULT;

	/**
	 * The default value of the '{@link #getCalciumDegrees() <em>Calcium Degrees</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCalciumDegrees()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal CALCIUM_DEGREES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCalciumDegrees() <em>Calcium Degrees</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCalciumDegrees()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal calciumDegrees = CALCIUM_DEGREES_EDEFAULT;

	/**
	 * The default value of the '{@link #getCalciumThickness() <em>Calcium Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCalciumThickness()
	 * @generated
	 * @ordered
	 */
	protected static final Dimension CALCIUM_THICKNESS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCalciumThickness() <em>Calcium Thickness</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCalciumThickness()
	 * @generated
	 * @ordered
	 */
	protected Dimension calciumThickness = CALCIUM_THICKNESS_EDEFAULT;

	/**
	 * The default value of the '{@link #getCalciumLength() <em>Calcium Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCalciumLength()
	 * @generated
	 * @ordered
	 */
	protected static final Dimension CALCIUM_LENGTH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCalciumLength() <em>Calcium Length</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCalciumLength()
	 * @generated
	 * @ordered
	 */
	protected Dimension calciumLength = CALCIUM_LENGTH_EDEFAULT;

	/**
	 * The cached value of the '{@link #getTraits() <em>Traits</em>}' attribute list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTraits()
	 * @generated
	 * @ordered
	 */
	protected EList<LesionTrait> traits;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected LesionMeasuresImpl()
	{
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass()
	{
		return ModelPackage.Literals.LESION_MEASURES;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isBluntStump()
	{
		return bluntStump;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBluntStump(boolean newBluntStump)
	{
		boolean oldBluntStump = bluntStump;
		bluntStump = newBluntStump;
		boolean oldBluntStumpESet = bluntStumpESet;
		bluntStumpESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LESION_MEASURES__BLUNT_STUMP, oldBluntStump, bluntStump, !oldBluntStumpESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetBluntStump()
	{
		boolean oldBluntStump = bluntStump;
		boolean oldBluntStumpESet = bluntStumpESet;
		bluntStump = BLUNT_STUMP_EDEFAULT;
		bluntStumpESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.LESION_MEASURES__BLUNT_STUMP, oldBluntStump, BLUNT_STUMP_EDEFAULT, oldBluntStumpESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetBluntStump()
	{
		return bluntStumpESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isCalcification()
	{
		return calcification;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCalcification(boolean newCalcification)
	{
		boolean oldCalcification = calcification;
		calcification = newCalcification;
		boolean oldCalcificationESet = calcificationESet;
		calcificationESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LESION_MEASURES__CALCIFICATION, oldCalcification, calcification, !oldCalcificationESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetCalcification()
	{
		boolean oldCalcification = calcification;
		boolean oldCalcificationESet = calcificationESet;
		calcification = CALCIFICATION_EDEFAULT;
		calcificationESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.LESION_MEASURES__CALCIFICATION, oldCalcification, CALCIFICATION_EDEFAULT, oldCalcificationESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetCalcification()
	{
		return calcificationESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getBendDegrees()
	{
		return bendDegrees;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setBendDegrees(BigDecimal newBendDegrees)
	{
		BigDecimal oldBendDegrees = bendDegrees;
		bendDegrees = newBendDegrees;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LESION_MEASURES__BEND_DEGREES, oldBendDegrees, bendDegrees));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isFailedBefore()
	{
		return failedBefore;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setFailedBefore(boolean newFailedBefore)
	{
		boolean oldFailedBefore = failedBefore;
		failedBefore = newFailedBefore;
		boolean oldFailedBeforeESet = failedBeforeESet;
		failedBeforeESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LESION_MEASURES__FAILED_BEFORE, oldFailedBefore, failedBefore, !oldFailedBeforeESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetFailedBefore()
	{
		boolean oldFailedBefore = failedBefore;
		boolean oldFailedBeforeESet = failedBeforeESet;
		failedBefore = FAILED_BEFORE_EDEFAULT;
		failedBeforeESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.LESION_MEASURES__FAILED_BEFORE, oldFailedBefore, FAILED_BEFORE_EDEFAULT, oldFailedBeforeESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetFailedBefore()
	{
		return failedBeforeESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getOcclusionMonths()
	{
		return occlusionMonths;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOcclusionMonths(BigDecimal newOcclusionMonths)
	{
		BigDecimal oldOcclusionMonths = occlusionMonths;
		occlusionMonths = newOcclusionMonths;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LESION_MEASURES__OCCLUSION_MONTHS, oldOcclusionMonths, occlusionMonths));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getCalciumDegrees()
	{
		return calciumDegrees;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCalciumDegrees(BigDecimal newCalciumDegrees)
	{
		BigDecimal oldCalciumDegrees = calciumDegrees;
		calciumDegrees = newCalciumDegrees;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LESION_MEASURES__CALCIUM_DEGREES, oldCalciumDegrees, calciumDegrees));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Dimension getCalciumThickness()
	{
		return calciumThickness;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCalciumThickness(Dimension newCalciumThickness)
	{
		Dimension oldCalciumThickness = calciumThickness;
		calciumThickness = newCalciumThickness;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LESION_MEASURES__CALCIUM_THICKNESS, oldCalciumThickness, calciumThickness));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Dimension getCalciumLength()
	{
		return calciumLength;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCalciumLength(Dimension newCalciumLength)
	{
		Dimension oldCalciumLength = calciumLength;
		calciumLength = newCalciumLength;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.LESION_MEASURES__CALCIUM_LENGTH, oldCalciumLength, calciumLength));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<LesionTrait> getTraits()
	{
		if (traits == null)
		{
			traits = new EDataTypeEList<LesionTrait>(LesionTrait.class, this, ModelPackage.LESION_MEASURES__TRAITS);
		}
		return traits;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType)
	{
		switch (featureID)
		{
			case ModelPackage.LESION_MEASURES__BLUNT_STUMP:
				return isBluntStump();
			case ModelPackage.LESION_MEASURES__CALCIFICATION:
				return isCalcification();
			case ModelPackage.LESION_MEASURES__BEND_DEGREES:
				return getBendDegrees();
			case ModelPackage.LESION_MEASURES__FAILED_BEFORE:
				return isFailedBefore();
			case ModelPackage.LESION_MEASURES__OCCLUSION_MONTHS:
				return getOcclusionMonths();
			case ModelPackage.LESION_MEASURES__CALCIUM_DEGREES:
				return getCalciumDegrees();
			case ModelPackage.LESION_MEASURES__CALCIUM_THICKNESS:
				return getCalciumThickness();
			case ModelPackage.LESION_MEASURES__CALCIUM_LENGTH:
				return getCalciumLength();
			case ModelPackage.LESION_MEASURES__TRAITS:
				return getTraits();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue)
	{
		switch (featureID)
		{
			case ModelPackage.LESION_MEASURES__BLUNT_STUMP:
				setBluntStump((Boolean)newValue);
				return;
			case ModelPackage.LESION_MEASURES__CALCIFICATION:
				setCalcification((Boolean)newValue);
				return;
			case ModelPackage.LESION_MEASURES__BEND_DEGREES:
				setBendDegrees((BigDecimal)newValue);
				return;
			case ModelPackage.LESION_MEASURES__FAILED_BEFORE:
				setFailedBefore((Boolean)newValue);
				return;
			case ModelPackage.LESION_MEASURES__OCCLUSION_MONTHS:
				setOcclusionMonths((BigDecimal)newValue);
				return;
			case ModelPackage.LESION_MEASURES__CALCIUM_DEGREES:
				setCalciumDegrees((BigDecimal)newValue);
				return;
			case ModelPackage.LESION_MEASURES__CALCIUM_THICKNESS:
				setCalciumThickness((Dimension)newValue);
				return;
			case ModelPackage.LESION_MEASURES__CALCIUM_LENGTH:
				setCalciumLength((Dimension)newValue);
				return;
			case ModelPackage.LESION_MEASURES__TRAITS:
				getTraits().clear();
				getTraits().addAll((Collection<? extends LesionTrait>)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID)
	{
		switch (featureID)
		{
			case ModelPackage.LESION_MEASURES__BLUNT_STUMP:
				unsetBluntStump();
				return;
			case ModelPackage.LESION_MEASURES__CALCIFICATION:
				unsetCalcification();
				return;
			case ModelPackage.LESION_MEASURES__BEND_DEGREES:
				setBendDegrees(BEND_DEGREES_EDEFAULT);
				return;
			case ModelPackage.LESION_MEASURES__FAILED_BEFORE:
				unsetFailedBefore();
				return;
			case ModelPackage.LESION_MEASURES__OCCLUSION_MONTHS:
				setOcclusionMonths(OCCLUSION_MONTHS_EDEFAULT);
				return;
			case ModelPackage.LESION_MEASURES__CALCIUM_DEGREES:
				setCalciumDegrees(CALCIUM_DEGREES_EDEFAULT);
				return;
			case ModelPackage.LESION_MEASURES__CALCIUM_THICKNESS:
				setCalciumThickness(CALCIUM_THICKNESS_EDEFAULT);
				return;
			case ModelPackage.LESION_MEASURES__CALCIUM_LENGTH:
				setCalciumLength(CALCIUM_LENGTH_EDEFAULT);
				return;
			case ModelPackage.LESION_MEASURES__TRAITS:
				getTraits().clear();
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID)
	{
		switch (featureID)
		{
			case ModelPackage.LESION_MEASURES__BLUNT_STUMP:
				return isSetBluntStump();
			case ModelPackage.LESION_MEASURES__CALCIFICATION:
				return isSetCalcification();
			case ModelPackage.LESION_MEASURES__BEND_DEGREES:
				return BEND_DEGREES_EDEFAULT == null ? bendDegrees != null : !BEND_DEGREES_EDEFAULT.equals(bendDegrees);
			case ModelPackage.LESION_MEASURES__FAILED_BEFORE:
				return isSetFailedBefore();
			case ModelPackage.LESION_MEASURES__OCCLUSION_MONTHS:
				return OCCLUSION_MONTHS_EDEFAULT == null ? occlusionMonths != null : !OCCLUSION_MONTHS_EDEFAULT.equals(occlusionMonths);
			case ModelPackage.LESION_MEASURES__CALCIUM_DEGREES:
				return CALCIUM_DEGREES_EDEFAULT == null ? calciumDegrees != null : !CALCIUM_DEGREES_EDEFAULT.equals(calciumDegrees);
			case ModelPackage.LESION_MEASURES__CALCIUM_THICKNESS:
				return CALCIUM_THICKNESS_EDEFAULT == null ? calciumThickness != null : !CALCIUM_THICKNESS_EDEFAULT.equals(calciumThickness);
			case ModelPackage.LESION_MEASURES__CALCIUM_LENGTH:
				return CALCIUM_LENGTH_EDEFAULT == null ? calciumLength != null : !CALCIUM_LENGTH_EDEFAULT.equals(calciumLength);
			case ModelPackage.LESION_MEASURES__TRAITS:
				return traits != null && !traits.isEmpty();
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString()
	{
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (bluntStump: ");
		if (bluntStumpESet) result.append(bluntStump); else result.append("<unset>");
		result.append(", calcification: ");
		if (calcificationESet) result.append(calcification); else result.append("<unset>");
		result.append(", bendDegrees: ");
		result.append(bendDegrees);
		result.append(", failedBefore: ");
		if (failedBeforeESet) result.append(failedBefore); else result.append("<unset>");
		result.append(", occlusionMonths: ");
		result.append(occlusionMonths);
		result.append(", calciumDegrees: ");
		result.append(calciumDegrees);
		result.append(", calciumThickness: ");
		result.append(calciumThickness);
		result.append(", calciumLength: ");
		result.append(calciumLength);
		result.append(", traits: ");
		result.append(traits);
		result.append(')');
		return result.toString();
	}

} //LesionMeasuresImpl
