/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.ferrule.model.ModelPackage;
import org.ferrule.model.Orientation;
import org.ferrule.model.Paper;
import org.ferrule.model.PaperSize;
import org.ferrule.model.PrimaryUnit;
import org.ferrule.model.ShownNumbers;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Paper</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.PaperImpl#getSize <em>Size</em>}</li>
 *   <li>{@link org.ferrule.model.impl.PaperImpl#getOrientation <em>Orientation</em>}</li>
 *   <li>{@link org.ferrule.model.impl.PaperImpl#getPrimaryUnit <em>Primary Unit</em>}</li>
 *   <li>{@link org.ferrule.model.impl.PaperImpl#getShowNumbers <em>Show Numbers</em>}</li>
 * </ul>
 *
 * @generated
 */
public class PaperImpl extends ElementImpl implements Paper
{
	/**
	 * The default value of the '{@link #getSize() <em>Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSize()
	 * @generated
	 * @ordered
	 */
	protected static final PaperSize SIZE_EDEFAULT = PaperSize.A4;

	/**
	 * The cached value of the '{@link #getSize() <em>Size</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSize()
	 * @generated
	 * @ordered
	 */
	protected PaperSize size = SIZE_EDEFAULT;

	/**
	 * This is true if the Size attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean sizeESet;

	/**
	 * The default value of the '{@link #getOrientation() <em>Orientation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOrientation()
	 * @generated
	 * @ordered
	 */
	protected static final Orientation ORIENTATION_EDEFAULT = Orientation.LANDSCAPE;

	/**
	 * The cached value of the '{@link #getOrientation() <em>Orientation</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getOrientation()
	 * @generated
	 * @ordered
	 */
	protected Orientation orientation = ORIENTATION_EDEFAULT;

	/**
	 * This is true if the Orientation attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean orientationESet;

	/**
	 * The default value of the '{@link #getPrimaryUnit() <em>Primary Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPrimaryUnit()
	 * @generated
	 * @ordered
	 */
	protected static final PrimaryUnit PRIMARY_UNIT_EDEFAULT = PrimaryUnit.MM;

	/**
	 * The cached value of the '{@link #getPrimaryUnit() <em>Primary Unit</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPrimaryUnit()
	 * @generated
	 * @ordered
	 */
	protected PrimaryUnit primaryUnit = PRIMARY_UNIT_EDEFAULT;

	/**
	 * This is true if the Primary Unit attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean primaryUnitESet;

	/**
	 * The default value of the '{@link #getShowNumbers() <em>Show Numbers</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShowNumbers()
	 * @generated
	 * @ordered
	 */
	protected static final ShownNumbers SHOW_NUMBERS_EDEFAULT = ShownNumbers.WORST;

	/**
	 * The cached value of the '{@link #getShowNumbers() <em>Show Numbers</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getShowNumbers()
	 * @generated
	 * @ordered
	 */
	protected ShownNumbers showNumbers = SHOW_NUMBERS_EDEFAULT;

	/**
	 * This is true if the Show Numbers attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean showNumbersESet;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected PaperImpl()
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
		return ModelPackage.Literals.PAPER;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PaperSize getSize()
	{
		return size;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSize(PaperSize newSize)
	{
		PaperSize oldSize = size;
		size = newSize == null ? SIZE_EDEFAULT : newSize;
		boolean oldSizeESet = sizeESet;
		sizeESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PAPER__SIZE, oldSize, size, !oldSizeESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetSize()
	{
		PaperSize oldSize = size;
		boolean oldSizeESet = sizeESet;
		size = SIZE_EDEFAULT;
		sizeESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.PAPER__SIZE, oldSize, SIZE_EDEFAULT, oldSizeESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetSize()
	{
		return sizeESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Orientation getOrientation()
	{
		return orientation;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setOrientation(Orientation newOrientation)
	{
		Orientation oldOrientation = orientation;
		orientation = newOrientation == null ? ORIENTATION_EDEFAULT : newOrientation;
		boolean oldOrientationESet = orientationESet;
		orientationESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PAPER__ORIENTATION, oldOrientation, orientation, !oldOrientationESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetOrientation()
	{
		Orientation oldOrientation = orientation;
		boolean oldOrientationESet = orientationESet;
		orientation = ORIENTATION_EDEFAULT;
		orientationESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.PAPER__ORIENTATION, oldOrientation, ORIENTATION_EDEFAULT, oldOrientationESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetOrientation()
	{
		return orientationESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public PrimaryUnit getPrimaryUnit()
	{
		return primaryUnit;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPrimaryUnit(PrimaryUnit newPrimaryUnit)
	{
		PrimaryUnit oldPrimaryUnit = primaryUnit;
		primaryUnit = newPrimaryUnit == null ? PRIMARY_UNIT_EDEFAULT : newPrimaryUnit;
		boolean oldPrimaryUnitESet = primaryUnitESet;
		primaryUnitESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PAPER__PRIMARY_UNIT, oldPrimaryUnit, primaryUnit, !oldPrimaryUnitESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetPrimaryUnit()
	{
		PrimaryUnit oldPrimaryUnit = primaryUnit;
		boolean oldPrimaryUnitESet = primaryUnitESet;
		primaryUnit = PRIMARY_UNIT_EDEFAULT;
		primaryUnitESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.PAPER__PRIMARY_UNIT, oldPrimaryUnit, PRIMARY_UNIT_EDEFAULT, oldPrimaryUnitESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetPrimaryUnit()
	{
		return primaryUnitESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public ShownNumbers getShowNumbers()
	{
		return showNumbers;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setShowNumbers(ShownNumbers newShowNumbers)
	{
		ShownNumbers oldShowNumbers = showNumbers;
		showNumbers = newShowNumbers == null ? SHOW_NUMBERS_EDEFAULT : newShowNumbers;
		boolean oldShowNumbersESet = showNumbersESet;
		showNumbersESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.PAPER__SHOW_NUMBERS, oldShowNumbers, showNumbers, !oldShowNumbersESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetShowNumbers()
	{
		ShownNumbers oldShowNumbers = showNumbers;
		boolean oldShowNumbersESet = showNumbersESet;
		showNumbers = SHOW_NUMBERS_EDEFAULT;
		showNumbersESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.PAPER__SHOW_NUMBERS, oldShowNumbers, SHOW_NUMBERS_EDEFAULT, oldShowNumbersESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetShowNumbers()
	{
		return showNumbersESet;
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
			case ModelPackage.PAPER__SIZE:
				return getSize();
			case ModelPackage.PAPER__ORIENTATION:
				return getOrientation();
			case ModelPackage.PAPER__PRIMARY_UNIT:
				return getPrimaryUnit();
			case ModelPackage.PAPER__SHOW_NUMBERS:
				return getShowNumbers();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue)
	{
		switch (featureID)
		{
			case ModelPackage.PAPER__SIZE:
				setSize((PaperSize)newValue);
				return;
			case ModelPackage.PAPER__ORIENTATION:
				setOrientation((Orientation)newValue);
				return;
			case ModelPackage.PAPER__PRIMARY_UNIT:
				setPrimaryUnit((PrimaryUnit)newValue);
				return;
			case ModelPackage.PAPER__SHOW_NUMBERS:
				setShowNumbers((ShownNumbers)newValue);
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
			case ModelPackage.PAPER__SIZE:
				unsetSize();
				return;
			case ModelPackage.PAPER__ORIENTATION:
				unsetOrientation();
				return;
			case ModelPackage.PAPER__PRIMARY_UNIT:
				unsetPrimaryUnit();
				return;
			case ModelPackage.PAPER__SHOW_NUMBERS:
				unsetShowNumbers();
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
			case ModelPackage.PAPER__SIZE:
				return isSetSize();
			case ModelPackage.PAPER__ORIENTATION:
				return isSetOrientation();
			case ModelPackage.PAPER__PRIMARY_UNIT:
				return isSetPrimaryUnit();
			case ModelPackage.PAPER__SHOW_NUMBERS:
				return isSetShowNumbers();
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
		result.append(" (size: ");
		if (sizeESet) result.append(size); else result.append("<unset>");
		result.append(", orientation: ");
		if (orientationESet) result.append(orientation); else result.append("<unset>");
		result.append(", primaryUnit: ");
		if (primaryUnitESet) result.append(primaryUnit); else result.append("<unset>");
		result.append(", showNumbers: ");
		if (showNumbersESet) result.append(showNumbers); else result.append("<unset>");
		result.append(')');
		return result.toString();
	}

} //PaperImpl
